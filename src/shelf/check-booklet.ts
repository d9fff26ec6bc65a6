/** `plainwork check booklet.html`: does today's program give the numbers that an old booklet printed? */
import version from "plainwork:version";
import { work } from "../booklet/notebook/work.ts";
import { AS_MADE_FILE } from "../recipe/as-made/as-made.ts";
import { EVIDENCE_FILE } from "../recipe/evidence.ts";
import { type Message, messageText } from "../recipe/message.ts";
import { examined } from "./build.ts";
import { type Carried, carriedValue, readBack } from "./carried.ts";
import { type ProjectFiles, RECIPE_FILE } from "./project-files.ts";
import type { World } from "./world.ts";

/** Larger files are no booklets. */
const LARGEST_PAGE = 64 * 1024 * 1024;

/** One number that comes out otherwise. */
export interface Difference {
  readonly name: string;
  /** As the booklet has it, and as it is today; undefined where there is no such number now. */
  readonly was: string;
  readonly now: string | undefined;
}

export interface BookletCheck {
  /** The page, by the path the user gave. */
  readonly shown: string;
  readonly ok: boolean;
  /** What is wrong with the page, or with the recipe in it for today's program. */
  readonly faults: readonly string[];
  /** The version it was built with. */
  readonly builtWith?: string;
  readonly files?: Readonly<Record<string, string>>;
  readonly numbers: number;
  readonly differences: readonly Difference[];
  /** Numbers that today's program works out and the booklet does not have. */
  readonly more: readonly string[];
}

/** Reads a booklet's page back and solves its recipe again. */
export function checkBooklet(world: World, shown: string): BookletCheck {
  const path = world.resolve(shown);
  const nothing = { shown, ok: false, numbers: 0, differences: [], more: [] };
  if (world.size(path) > LARGEST_PAGE)
    return { ...nothing, faults: ["this file is larger than any booklet"] };
  const found = readBack(new TextDecoder().decode(world.read(path)));
  if (!found)
    return {
      ...nothing,
      faults: [
        "this page carries no recipe that can be read: it is no booklet, it is damaged, or a version before recipes were carried built it",
      ],
    };
  const { carried, damaged } = found;
  const base = { ...nothing, builtWith: carried.plainwork, files: carried.files };
  if (damaged === "recipe")
    return {
      ...base,
      faults: [
        "this booklet is damaged: the recipe in it is not what it was built from (its checksum differs)",
      ],
    };
  const faults = damaged
    ? ["this page was changed after it was built (its checksum differs); the recipe in it is whole"]
    : [];
  const recipe = carried.files[RECIPE_FILE] ?? "";
  const again = examined(recipe, filesOf(carried), carried.paces, undefined, carried.size, shown);
  const plan = again.plan ?? again.sizes?.[0]?.plan;
  if (!plan || !again.own)
    return {
      ...base,
      faults: [
        ...faults,
        "today's program cannot work this recipe out:",
        ...said(again.messages, shown, carried),
      ],
    };
  const { values } = work(plan, again.own.notebook).plan;
  const now = new Map([...values].map(([name, value]) => [name, carriedValue(value)]));
  const before = Object.entries(carried.values);
  const differences = before.flatMap(([name, [exact, unit, text]]): Difference[] => {
    const today = now.get(name);
    if (today && today[0] === exact && today[1] === unit) return [];
    const same = today?.[2] === text;
    return [
      {
        name,
        was: same ? `${exact} ${unit}` : text,
        now: today && (same ? `${today[0]} ${today[1]}` : today[2]),
      },
    ];
  });
  return {
    ...base,
    ok: faults.length === 0 && differences.length === 0,
    faults,
    numbers: before.length,
    differences,
    more: [...now.keys()].filter((name) => !(name in carried.values)),
  };
}

function filesOf({ files }: Carried): ProjectFiles {
  const file = (name: string) => {
    const text = files[name];
    return text === undefined ? undefined : { file: name, text };
  };
  const [recipe, evidence, asMade] = [file(RECIPE_FILE), file(EVIDENCE_FILE), file(AS_MADE_FILE)];
  return {
    ...(recipe ? { recipe } : {}),
    ...(evidence ? { evidence } : {}),
    ...(asMade ? { asMade } : {}),
    templates: Object.keys(files)
      .filter((name) => name.startsWith("templates/"))
      .flatMap((name) => file(name) ?? []),
    messages: [],
  };
}

const said = (messages: readonly Message[], shown: string, { files }: Carried): string[] =>
  messages
    .filter(({ level }) => level === "error")
    .map((message) => {
      const { place } = message;
      const moved = place ? { ...message, place: { ...place, file: `${shown}, ${place.file}` } } : message;
      return messageText(moved, files[place?.file ?? ""]);
    });

/** The check in words. */
export function bookletCheckText({
  shown,
  ok,
  faults,
  builtWith,
  numbers,
  differences,
  more,
}: BookletCheck): string {
  const lines = faults.map((fault) => `${shown}: ${fault}`.replace(`${shown}: ${shown}`, shown));
  if (ok)
    lines.push(
      `${shown}: whole, built with ${builtWith}; today's program (${version}) gives the same ${numbers} numbers${more.length > 0 ? `, and ${more.length} more` : ""}`,
    );
  else if (numbers > 0 && differences.length === 0)
    lines.push(`${shown}: today's program (${version}) gives the numbers of that recipe as ${builtWith} did`);
  else if (numbers > 0) {
    lines.push(
      `${shown}: built with ${builtWith}; today's program (${version}) gives ${differences.length} of its ${numbers} numbers otherwise:`,
      ...differences.map(
        ({ name, was, now }) => `  ${name}: ${was} in the booklet, ${now ?? "no such number"} today`,
      ),
      "  do: build the recipe anew if the garment is not cut yet; else keep to the booklet you cut from",
    );
  }
  return lines.join("\n");
}
