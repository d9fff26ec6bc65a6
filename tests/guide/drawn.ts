/** What a printed page holds, read back from the PDF by poppler: lines in millimetres, dark places, words. */
import { execFileSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** One stroked path of a page: its width as drawn, and its pieces, all in millimetres of the paper. */
export interface Drawn {
  readonly width: number;
  readonly round: boolean;
  readonly closed: boolean;
  readonly curved: boolean;
  readonly pieces: readonly (readonly Spot[])[];
}

const POINT = 25.4 / 72;

/** Sizes of a PDF's pages in millimetres. */
export function pageSizes(pdf: string): { width: number; height: number }[] {
  const told = execFileSync("pdfinfo", ["-l", "9999", pdf], { encoding: "utf8" });
  return [...told.matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gm)].map(([, width, height]) => ({
    width: Number(width) * POINT,
    height: Number(height) * POINT,
  }));
}

/** Text of every page, in reading order. */
export function pageTexts(pdf: string, ...options: string[]): string[] {
  const text = execFileSync("pdftotext", [...options, pdf, "-"], { encoding: "utf8", maxBuffer: 1e8 });
  return text.split("\f").slice(0, -1);
}

/** Every stroked path of one page, in the order in which it was drawn. */
export function drawnOn(pdf: string, page: number): Drawn[] {
  const n = String(page);
  const svg = execFileSync("pdftocairo", ["-svg", "-f", n, "-l", n, pdf, "-"], {
    encoding: "utf8",
    maxBuffer: 1e8,
  });
  return [
    ...svg.matchAll(/<path style="fill:none;([^"]*)" d="([^"]*)"(?: transform="matrix\(([^)]*)\)")?/g),
  ].map(([, style = "", d = "", matrix = "1,0,0,1,0,0"]) => {
    const [a = 1, b = 0, c = 0, e = 1, f = 0, g = 0] = matrix.split(",").map(Number);
    const place = (x: number, y: number): Spot => ({
      x: (a * x + c * y + f) * POINT,
      y: (b * x + e * y + g) * POINT,
    });
    const pieces = d
      .split("M")
      .map((piece) =>
        [...piece.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => place(Number(x), Number(y))),
      )
      .filter((piece) => piece.length > 1);
    return {
      width: Number(/stroke-width:([\d.]+)/.exec(style)?.[1]) * a * POINT,
      round: style.includes("linecap:round"),
      closed: d.includes("Z"),
      curved: d.includes("C"),
      pieces,
    };
  });
}

/** Middles of the dark runs along one level line of a page, in millimetres from its left edge; by the printer's own dots. */
export function darkAlong(pdf: string, page: number, y: number): number[] {
  const folder = mkdtempSync(join(tmpdir(), "plainwork-"));
  try {
    const dots = 600;
    const step = 25.4 / dots;
    const crop = ["-x", "0", "-y", String(Math.round(y / step)), "-W", "6000", "-H", "1"];
    const n = String(page);
    execFileSync("pdftoppm", [
      "-r",
      String(dots),
      "-gray",
      "-singlefile",
      "-f",
      n,
      "-l",
      n,
      ...crop,
      pdf,
      join(folder, "line"),
    ]);
    const image = readFileSync(join(folder, "line.pgm"));
    const [, width = 0, , start = 0] = headOf(image);
    const row = image.subarray(start, start + width);
    const runs: number[] = [];
    for (let i = 0; i < row.length; i += 1) {
      if ((row[i] as number) > 127) continue;
      const from = i;
      while (i < row.length && (row[i] as number) <= 127) i += 1;
      runs.push(((from + i) / 2) * step);
    }
    return runs;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Maximum, width, height and where the dots begin in a raw grey picture. */
function headOf(image: Uint8Array): [number, number, number, number] {
  const head = /^P5\s+(\d+)\s+(\d+)\s+(\d+)\s/.exec(new TextDecoder("latin1").decode(image.subarray(0, 64)));
  if (!head) throw new Error("not a grey picture");
  return [Number(head[3]), Number(head[1]), Number(head[2]), head[0].length];
}
