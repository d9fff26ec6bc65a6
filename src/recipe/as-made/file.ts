/** as-made.yaml as a file: read with places, and added to at its end. */
import { Document, isSeq, parseDocument } from "yaml";
import { Source } from "../lines.ts";
import type { Message } from "../message.ts";
import { messageOf } from "../problem.ts";
import { readListTree } from "../tree.ts";
import type { Data } from "../written.ts";
import { KEYS, type ReadAsMade, readAsMade } from "./read.ts";

/** What a new file begins with. */
const HEAD = `# What really happened to this garment, one entry a sitting. \`plainwork record\` adds to the end and never changes what
# stands here; you may write entries too, the latest last. src/shelf/README.md says what can stand in one.
`;

/** Reads the file's text. Never throws. */
export function readAsMadeFile(file: string, text: string): ReadAsMade {
  const source = new Source(file, text);
  const tree = readListTree(source);
  if (tree.messages.length > 0) return { messages: tree.messages };
  return readAsMade(tree.items, tree.places);
}

/** One entry as the file writes it, keys in their order, every line indented by `indent`. */
export function entryText(entry: Readonly<Record<string, Data>>, indent = "", newline = "\n"): string {
  const rank = (key: string): number => (KEYS as readonly string[]).indexOf(key);
  const ordered = Object.fromEntries(Object.entries(entry).sort(([a], [b]) => rank(a) - rank(b)));
  const document = new Document([ordered], { schema: "failsafe" });
  const lines = document.toString({ lineWidth: 0, flowCollectionPadding: false }).split("\n");
  return lines.map((line) => (line === "" ? line : indent + line)).join(newline);
}

/** The text with an entry added at its end, or why that cannot be; what stood there stays as it was, byte for byte. */
export function withEntry(
  file: string,
  text: string | undefined,
  entry: Readonly<Record<string, Data>>,
): { readonly text: string } | { readonly messages: readonly Message[] } {
  if (text === undefined || text.trim() === "") return { text: (text ?? "") + HEAD + entryText(entry) };
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  const gap = text.endsWith("\n") ? "" : newline;
  const written = text + gap + entryText(entry, indentOf(text), newline);
  const before = readAsMadeFile(file, text);
  if (!before.asMade) return { messages: before.messages };
  const after = readAsMadeFile(file, written);
  const kept = JSON.stringify(after.asMade?.written.slice(0, -1)) === JSON.stringify(before.asMade.written);
  if (after.asMade && kept && after.asMade.written.length === before.asMade.written.length + 1)
    return { text: written };
  const end = new Source(file, text).place(text.trimEnd().length - 1, text.trimEnd().length);
  return {
    messages: [
      messageOf(
        {
          code: "cannot-add",
          text: "nothing can be added after what stands at the end of this file",
          expected: "a list whose every entry begins with a hyphen on a line of its own",
          hint: "write the entries one below the other, and end the file after the last",
        },
        "",
        end,
      ),
    ],
  };
}

/** How far the list's hyphens are indented. */
function indentOf(written: string): string {
  const text = written.replace(/^\ufeff/, "");
  const { contents } = parseDocument(text, { schema: "failsafe", logLevel: "silent" });
  if (!isSeq(contents) || contents.flow) return "";
  const first = contents.range?.[0] ?? 0;
  return /[ ]*$/.exec(text.slice(text.lastIndexOf("\n", first - 1) + 1, first))?.[0] ?? "";
}
