/** Unpacks and starts the core that works everything out again: only when it is first wanted. */
import type { Opened } from "./core.ts";

let opening: Promise<Opened> | undefined;

const TOO_OLD =
  "This browser is too old to work the numbers out again. Everything else on the page works; the program's own build gives the booklet for other measures.";

/** Why the core could not be started, fit to show. */
export class NoCoreError extends Error {}

/** The core, taking over this page; the same one every time. */
export function core(document: Document): Promise<Opened> {
  opening ??= start(document);
  return opening;
}

async function start(document: Document): Promise<Opened> {
  if (typeof DecompressionStream === "undefined") throw new NoCoreError(TOO_OLD);
  const [script, chapters] = await Promise.all([unpacked(document, "core"), unpacked(document, "chapters")]);
  globalThis.plainworkChapters = JSON.parse(chapters);
  // Its checksum is in the page's policy, so a script of exactly this text may run.
  const element = document.createElement("script");
  element.textContent = script;
  document.head.append(element);
  element.remove();
  if (!globalThis.plainworkCore) throw new NoCoreError(TOO_OLD);
  const data = JSON.parse(document.getElementById("recipe")?.textContent ?? "null");
  return globalThis.plainworkCore.open(data, document);
}

async function unpacked(document: Document, id: string): Promise<string> {
  const packed = atob(document.getElementById(id)?.textContent ?? "");
  const bytes = Uint8Array.from(packed, (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  return new Response(stream).text();
}
