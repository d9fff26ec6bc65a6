/** What the catalogue says of a garment, for its page and its Markdown alike. */
import type { Entry, SaidName } from "./entry.ts";

const METHODS: Readonly<Record<string, string>> = {
  gauged: "gauged all round",
  pleated: "pleated",
  "pleated-gauged-back": "pleated, gauged behind",
  "flat-front-gauged": "plain in front, gauged elsewhere",
};

/** How the fullness is set; zones by what is in them. */
export const methodWords = ({ method }: Entry): string =>
  METHODS[method] ?? method.replace(/\b(knife|box|double-box)\b/g, "$1 pleats");

const shown = ({ values }: Entry, name: SaidName): string => values.get(name)?.shown ?? "";

/** A name with its size. */
export const titleWords = ({ title, size }: Entry): string =>
  size === "" ? title : `${title}, size ${size}`;

/** From waist seam to hem: in front and behind, or once where they are alike. */
export function waistToHem(entry: Entry): string {
  const [front, back] = [shown(entry, "finished.front"), shown(entry, "finished.back")];
  return front === back || back === "" ? front : `front ${front}, back ${back}`;
}

export const roundWords = (entry: Entry): string => shown(entry, "skirt.round");
export const waistWords = (entry: Entry): string => shown(entry, "waist.seam");
export const fullnessWords = (entry: Entry): string => shown(entry, "skirt.fullness");
export const buyWords = (entry: Entry): string => shown(entry, "cloth.buy");

/** A folder as an address beside the catalogue. */
export const address = (folder: string): string => folder.split("/").map(encodeURIComponent).join("/");
