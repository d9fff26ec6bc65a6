/** The other garments beside a project: what their records say of the maker's own pace. */
import { basename, dirname, join } from "node:path";
import { AS_MADE_FILE, type AsMade } from "../recipe/as-made/as-made.ts";
import { readAsMadeFile } from "../recipe/as-made/file.ts";
import { type Paces, pacesOf } from "../recipe/as-made/pace.ts";
import { LARGEST_AS_MADE } from "../recipe/limits.ts";
import type { Message } from "../recipe/message.ts";
import type { Project } from "./find.ts";
import { isWithin, RECIPE_FILE } from "./project-files.ts";
import { readText } from "./texts.ts";
import type { World } from "./world.ts";

interface Known {
  readonly name: string;
  /** The record as it is written, or why it is not text. */
  readonly text: string;
  /** Absent where its record cannot be read. */
  readonly asMade?: AsMade;
}

/** Reads each folder of projects once. */
export class Neighbours {
  private readonly world: World;
  private readonly folders = new Map<string, readonly Known[]>();

  constructor(world: World) {
    this.world = world;
  }

  /** Rates from every other recorded garment of the folder that this project stands in; records that cannot be read are told. */
  pacesFor(project: Project): { readonly paces: Paces; readonly messages: readonly Message[] } {
    const others = this.beside(project);
    return {
      paces: pacesOf(others.flatMap(({ asMade }) => asMade ?? [])),
      messages: others.flatMap(({ name, asMade }) =>
        asMade
          ? []
          : [
              {
                code: "record-unread",
                level: "note" as const,
                text: `the record of "${name}" cannot be read, so your pace is reckoned without it`,
                hint: `check ${name} to see what is wrong`,
              },
            ],
      ),
    };
  }

  /** The records that a project's pace is reckoned from, as they are written. */
  textsFor(project: Project): readonly string[] {
    return this.beside(project).flatMap(({ name, text }) => [name, text]);
  }

  private beside({ recipe }: Project): readonly Known[] {
    if (basename(recipe) !== RECIPE_FILE) return [];
    const own = dirname(recipe);
    return this.known(dirname(own)).filter(({ name }) => name !== basename(own));
  }

  private known(folder: string): readonly Known[] {
    const before = this.folders.get(folder);
    if (before) return before;
    const { world } = this;
    const found = this.names(folder)
      .filter((name) => !name.startsWith(".") && world.kind(join(folder, name, AS_MADE_FILE)) === "file")
      .filter((name) => world.kind(join(folder, name, RECIPE_FILE)) === "file")
      .filter((name) => isWithin(world, join(folder, name), join(folder, name, AS_MADE_FILE)))
      .map((name): Known => {
        const text = readText(world, join(folder, name, AS_MADE_FILE), "record", "", LARGEST_AS_MADE);
        const asMade = typeof text === "string" ? readAsMadeFile(AS_MADE_FILE, text).asMade : undefined;
        const known = { name, text: typeof text === "string" ? text : text.code };
        return asMade ? { ...known, asMade } : known;
      });
    this.folders.set(folder, found);
    return found;
  }

  /** What stands in a folder; nothing where the maker may not look. */
  private names(folder: string): readonly string[] {
    try {
      return this.world.list(folder);
    } catch {
      return [];
    }
  }
}
