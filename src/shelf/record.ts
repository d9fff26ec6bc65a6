/** `plainwork record`: adds what a page's record says to the garment's as-made.yaml. */
import { basename, dirname, join } from "node:path";
import { AS_MADE_FILE } from "../recipe/as-made/as-made.ts";
import { readAsMadeFile, withEntry } from "../recipe/as-made/file.ts";
import { readAsMade } from "../recipe/as-made/read.ts";
import { LARGEST_AS_MADE, LARGEST_RECORD } from "../recipe/limits.ts";
import type { Message } from "../recipe/message.ts";
import { messageOf } from "../recipe/problem.ts";
import type { Plan } from "../solve/plan.ts";
import { atPath, checkProject, type Outcome } from "./build.ts";
import { findProjects, type Project, UsageError } from "./find.ts";
import { locked } from "./lock.ts";
import { placeFile } from "./place.ts";
import { RECIPE_FILE } from "./project-files.ts";
import { digestOf, newEntry } from "./record-entry.ts";
import { type RecordFile, readRecordFile } from "./record-file.ts";
import { readText } from "./texts.ts";
import type { World } from "./world.ts";

/** How a record was taken in. */
export interface Recorded {
  /** The file it is added to, by the path the user gave. */
  readonly file: string;
  /** The date of the entry that was added, or of the one that the same record made before. */
  readonly date?: string;
  readonly added: boolean;
  /** Each with its place by the path the user gave. */
  readonly messages: readonly Message[];
  readonly sources: ReadonlyMap<string, string>;
}

/**
 * Takes a record in. The file is added to at its end, whole or not at all; what stood in it stays byte for byte. The same
 * record again, or one that says nothing new, adds nothing. Throws UsageError for wrong use.
 */
export function recordGarment(world: World, folder: string, given: string): Recorded {
  const projects = findProjects(world, [folder]);
  const [project] = projects;
  if (!project || projects.length > 1)
    throw new UsageError(`"${folder}" holds ${projects.length} garments: name the folder of one`);
  if (basename(project.recipe) !== RECIPE_FILE)
    throw new UsageError(
      `a record is kept in a garment's folder, beside its ${RECIPE_FILE}: name the folder`,
    );
  const path = world.resolve(given);
  if (world.kind(path) !== "file") throw new UsageError(`there is no record "${given}"`);
  const file = join(dirname(project.shown), AS_MADE_FILE);
  const outcome = checkProject(world, project);
  if (outcome.sizes)
    throw new UsageError(
      `"${project.shown}" has sizes, and a record is of one garment: copy the recipe of the size that was made into a folder of its own, without sizes, and keep the record there`,
    );
  if (!outcome.plan) return refusedBy(outcome, file);
  const text = readText(world, path, "record", "a record of this size is none", LARGEST_RECORD);
  if (typeof text !== "string") {
    const place = { file: given, line: 1, column: 1, length: 1 };
    return { file, added: false, messages: [{ ...text, level: "error", place }], sources: new Map() };
  }
  const { plan } = outcome;
  const record = readRecordFile(given, text, plan.recipe.title, project.shown);
  const sources = new Map([[given, text]]);
  if ("messages" in record) return { file, added: false, messages: record.messages, sources };
  return locked(world, join(dirname(project.recipe), `.${AS_MADE_FILE}.lock`), () => ({
    file,
    ...added(world, project, plan, record, sources),
  }));
}

function refusedBy({ project, messages, sources }: Outcome, file: string): Recorded {
  const shown = [...sources].map(
    ([name, text]) =>
      [name === RECIPE_FILE ? project.shown : join(dirname(project.shown), name), text] as const,
  );
  return {
    file,
    added: false,
    messages: messages.map((message) => atPath(message, project)),
    sources: new Map(shown),
  };
}

function added(
  world: World,
  project: Project,
  plan: Plan,
  record: RecordFile,
  sources: ReadonlyMap<string, string>,
): Omit<Recorded, "file"> {
  const path = join(dirname(project.recipe), AS_MADE_FILE);
  const shown = join(dirname(project.shown), AS_MADE_FILE);
  const text =
    world.kind(path) === "file"
      ? new TextDecoder("utf-8", { ignoreBOM: true }).decode(world.read(path))
      : undefined;
  const before = text === undefined ? undefined : readAsMadeFile(shown, text);
  const digest = digestOf(record);
  const same = before?.asMade?.entries.find((entry) => entry.record === digest);
  if (same) return { added: false, date: same.date, messages: [], sources };
  const fresh = newEntry(record, before?.asMade, plan, world.today());
  if (!fresh) return { added: false, messages: [], sources };
  const notes = fresh.unknown.map((name) =>
    messageOf(
      { code: "unknown-entry", text: `"${name}" is not known here and was left out` },
      "",
      record.placeOf("said", name),
      "warning",
    ),
  );
  const faults = [
    ...readAsMade([fresh.entry as never], fresh.places).messages,
    ...missingPhotographs(world, project, record, fresh.entry),
  ];
  if (faults.length > 0) return { added: false, messages: [...faults, ...notes], sources };
  const written = withEntry(shown, text, fresh.entry);
  if ("messages" in written)
    return { added: false, messages: written.messages, sources: new Map([...sources, [shown, text ?? ""]]) };
  const size = new TextEncoder().encode(written.text).length;
  if (size > LARGEST_AS_MADE) {
    const text = `${AS_MADE_FILE} would be ${size} bytes long with it; at most ${LARGEST_AS_MADE} are read`;
    const place = { file: shown, line: 1, column: 1, length: 1 };
    const full = messageOf(
      { code: "too-large", text, hint: "keep older entries in another file" },
      "",
      place,
    );
    return { added: false, messages: [full], sources };
  }
  clearLeftovers(world, dirname(project.recipe));
  placeFile(world, path, written.text, true);
  return { added: true, date: String(fresh.entry.date), messages: notes, sources };
}

/** What runs that were stopped half-way wrote; whoever holds the lock is the only one writing. */
function clearLeftovers(world: World, folder: string): void {
  for (const name of world.list(folder))
    if (name.startsWith(`${AS_MADE_FILE}.new-`)) world.remove(join(folder, name));
}

function missingPhotographs(
  world: World,
  project: Project,
  record: RecordFile,
  { photographs = [] }: Readonly<Record<string, unknown>>,
): Message[] {
  return (photographs as readonly string[])
    .filter((path) => world.kind(join(dirname(project.recipe), path)) !== "file")
    .map((path) => {
      const at = record.photographs.indexOf(path);
      const place = at < 0 ? record.placeOf("said", "photographs") : record.placeOf("photographs", at);
      return messageOf(
        {
          code: "no-photograph",
          text: `there is no file "${path}" beside the recipe`,
          hint: "put it there first, or take it out of the record",
        },
        "",
        place,
      );
    });
}
