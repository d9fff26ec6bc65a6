/** Prints a booklet's page to PDF files with a browser: full pages, and small pages in reading order. */
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type PaperName, pageOnPaper } from "../booklet/paper.ts";
import type { World } from "./world.ts";

/** The paper that the guides and the full pages are printed on. */
export type Paper = "a4" | "letter";

export interface Printing {
  /** The browser's file. */
  readonly browser: string;
  readonly paper: Paper;
}

/** Why a booklet was not printed; fit to show. */
export class PrintError extends Error {}

/** The files for each paper, and the page size of each. The guides are at true size in both. */
export const PDF_FILES: Readonly<Record<Paper, readonly (readonly [string, PaperName])[]>> = {
  a4: [
    ["booklet.pdf", "a4"],
    ["booklet-a5.pdf", "a5"],
  ],
  letter: [
    ["booklet.pdf", "letter"],
    ["booklet-half-letter.pdf", "half-letter"],
  ],
};

/** Longer than any booklet takes. */
const SECONDS = 120;

/** Chromium without a window, asking for nothing on the net. */
export const QUIET_FLAGS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
] as const;

const FLAGS = [
  ...QUIET_FLAGS,
  "--disable-extensions",
  "--no-pdf-header-footer",
  "--generate-pdf-document-outline",
];

/**
 * Prints a booklet's page. Works in a folder of its own beside the booklets, which some browsers must see to read from it,
 * and takes it away again. Throws PrintError when the browser fails.
 */
export function printBooklet(
  world: World,
  html: string,
  folder: string,
  { browser, paper }: Printing,
): Map<string, Uint8Array> {
  const files = new Map<string, Uint8Array>();
  try {
    world.makeFolder(folder);
    for (const [file, size] of PDF_FILES[paper]) {
      const page = join(folder, `${size}.html`);
      const pdf = join(folder, file);
      world.write(page, pageOnPaper(html, size));
      const words = [
        ...FLAGS,
        `--user-data-dir=${join(folder, "profile")}`,
        `--print-to-pdf=${pdf}`,
        pathToFileURL(page).href,
      ];
      const fault = world.run(browser, words, SECONDS);
      if (fault) throw new PrintError(`${browser} did not print the booklet: ${fault}`);
      files.set(file, printed(world, pdf, browser));
    }
  } finally {
    world.remove(folder);
  }
  return files;
}

function printed(world: World, pdf: string, browser: string): Uint8Array {
  if (world.kind(pdf) !== "file") throw new PrintError(`${browser} ended well but wrote no PDF`);
  const bytes = world.read(pdf);
  if (latin(bytes.subarray(0, 5)) !== "%PDF-") throw new PrintError(`what ${browser} wrote is not a PDF`);
  return undated(bytes);
}

const latin = (bytes: Uint8Array): string => new TextDecoder("latin1").decode(bytes);

/** The same file without the moment of its making, digit for digit, so that the same recipe gives the same bytes. */
function undated(bytes: Uint8Array): Uint8Array {
  const fresh = Uint8Array.from(bytes);
  const still = new TextEncoder().encode("20000101000000+00'00'");
  for (const found of latin(bytes).matchAll(/\/(?:Creation|Mod)Date \(D:(\d{14}[+-]\d\d'\d\d')\)/g))
    fresh.set(still, found.index + found[0].indexOf("D:") + 2);
  return fresh;
}
