/** The recipe's file: read with a checksum, written only over the version that was read. What cannot be written over it is kept beside it. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { LARGEST_RECIPE } from "../recipe/limits.ts";
import { alone, newFile, replaceFile, sweep } from "./atomic.ts";

/** A version of the recipe. */
export interface Version {
  readonly text: string;
  readonly checksum: string;
}

/** What came of a save. */
export type Saved =
  | { readonly is: "saved"; readonly checksum: string }
  /** Someone else changed the file: nothing was written over it, and what was to be saved is kept in a file beside it. */
  | { readonly is: "changed-elsewhere"; readonly theirs: Version | undefined; readonly kept: string };

export const checksumOf = (bytes: Uint8Array | string): string =>
  createHash("sha256").update(bytes).digest("hex").slice(0, 32);

export class RecipeFile {
  readonly path: string;
  /** `recipe` of `recipe.md`. */
  private readonly stem: string;
  private readonly kept = new Set<string>();

  /** @param path the file itself, not a link to it */
  constructor(path: string) {
    this.path = path;
    this.stem = basename(path).replace(/\.md$/i, "");
    sweep(path);
  }

  /** The version on the disk; undefined where there is none, or none that can be read as text. */
  read(): Version | undefined {
    try {
      if (statSync(this.path).size > LARGEST_RECIPE) return undefined;
      const bytes = readFileSync(this.path);
      const text = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
      return { text, checksum: checksumOf(bytes) };
    } catch {
      return undefined;
    }
  }

  /**
   * Saves a text that was made of the version with this checksum ("" where there was no file).
   *
   * @param kept a file of this sitting's own that holds an older state of the same text: with a conflict it is renewed
   *   instead of a further one being made, without one it is taken away, as its text is in the recipe then
   */
  save(base: string, text: string, kept?: string): Saved {
    return alone(this.path, (): Saved => {
      const theirs = this.read();
      const checksum = checksumOf(text);
      if ((theirs?.checksum ?? "") !== base && theirs?.checksum !== checksum) {
        return { is: "changed-elsewhere", theirs, kept: this.keep(text, kept) };
      }
      if (theirs?.checksum !== checksum) replaceFile(this.path, Buffer.from(text, "utf8"));
      if (kept !== undefined && this.kept.has(kept)) {
        rmSync(join(dirname(this.path), kept), { force: true });
        this.kept.delete(kept);
      }
      return { is: "saved", checksum };
    });
  }

  /** Keeps a text beside the recipe, in a new file or in one of this sitting's own; gives the file's name. */
  keep(text: string, name?: string): string {
    const bytes = Buffer.from(text, "utf8");
    const folder = dirname(this.path);
    if (name !== undefined && this.kept.has(name)) {
      replaceFile(join(folder, name), bytes);
      return name;
    }
    const moment = new Date().toISOString().slice(0, 19).replace(/[:T]/g, "-");
    for (let n = 1; ; n += 1) {
      const fresh = `${this.stem}.kept-${moment}${n === 1 ? "" : `-${n}`}.md`;
      if (!newFile(join(folder, fresh), bytes)) continue;
      this.kept.add(fresh);
      return fresh;
    }
  }

  /** Names of all versions that are kept beside the recipe, the newest last. */
  keptVersions(): string[] {
    return readdirSync(dirname(this.path))
      .filter((name) => this.isKept(name))
      .sort();
  }

  /** A kept version by its name; undefined where the name is none of theirs. */
  readKept(name: string): Version | undefined {
    return this.isKept(name) ? new RecipeFile(join(dirname(this.path), name)).read() : undefined;
  }

  private isKept(name: string): boolean {
    const { stem } = this;
    return name.startsWith(`${stem}.kept-`) && /^[\d-]+\.md$/.test(name.slice(stem.length + 6));
  }
}
