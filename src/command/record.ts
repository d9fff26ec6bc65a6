/** `plainwork record`: what the page saved goes to the garment. */
import version from "plainwork:version";
import { messageText } from "../recipe/message.ts";
import { UsageError } from "../shelf/find.ts";
import { recordGarment } from "../shelf/record.ts";
import { messageJson } from "../shelf/report.ts";
import type { World } from "../shelf/world.ts";

/** Adds a record, and says what came of it; gives the exit code. Throws UsageError and what the disk throws. */
export function record(words: readonly string[], world: World): number {
  const json = words.includes("--json");
  const [folder, file, ...rest] = words.filter((word) => word !== "--json");
  const option = words.find((word) => word.startsWith("-") && word !== "--json");
  if (option) throw new UsageError(`"${option}" is not an option of record`);
  if (folder === undefined || file === undefined || rest.length > 0)
    throw new UsageError(
      "record needs a garment's folder and one record: plainwork record my-skirt record.json",
    );
  const { added, date, messages, sources, file: shown } = recordGarment(world, folder, file);
  const failed = messages.some(({ level }) => level === "error");
  if (json)
    world.out(
      `${JSON.stringify({ plainwork: version, file: shown, added, date: date ?? null, messages: messages.map(messageJson) }, null, 1)}\n`,
    );
  else {
    for (const message of messages)
      world.err(`${messageText(message, sources.get(message.place?.file ?? ""))}\n`);
    if (failed) world.err(`${shown}: nothing added\n`);
    else if (added) world.out(`${shown}: added what was done, ${date}\n`);
    else if (date) world.out(`${shown}: this record was added before (${date}); nothing added\n`);
    else world.out(`${shown}: this record says nothing new; nothing added\n`);
  }
  return failed ? 1 : 0;
}
