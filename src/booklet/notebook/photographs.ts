/** Photographs: what their bytes say they are, how large they may be, and how they stand in the page. */
import { LARGEST_PHOTOGRAPH, LARGEST_TOGETHER, MOST_PHOTOGRAPHS } from "../../recipe/limits.ts";
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { base64 } from "./base64.ts";

export interface Photograph {
  readonly path: string;
  readonly bytes: Uint8Array;
  /** `data:image/png;base64,…` */
  readonly data: string;
}

export type Photographs = ReadonlyMap<string, Photograph>;

/** What was found at a path: bytes, or that there is nothing, or only that it is too large and how large. */
export type FoundFile = Uint8Array | "missing" | { readonly tooLarge: number };

/** Reads what a notebook asks for; everything that is wrong is a message at the place that asks. */
export function readPhotographs(
  wanted: Readonly<Record<string, Place>>,
  find: (path: string) => FoundFile,
): { readonly photographs: Photographs; readonly messages: readonly Message[] } {
  const photographs = new Map<string, Photograph>();
  const messages: Message[] = [];
  let together = 0;
  const paths = Object.keys(wanted);
  const past = paths[MOST_PHOTOGRAPHS];
  if (past !== undefined) {
    const text = `there are ${paths.length} photographs; at most ${MOST_PHOTOGRAPHS}`;
    const problem: Problem = { code: "too-many", text, hint: "leave some out, or make two projects of it" };
    return { photographs, messages: [messageOf(problem, "", wanted[past] as Place)] };
  }
  for (const [path, place] of Object.entries(wanted)) {
    const say = (problem: Problem): void => void messages.push(messageOf(problem, "", place));
    const found = find(path);
    if (found === "missing") {
      say({
        code: "no-photograph",
        text: `there is no file ${quoted(path)} beside the recipe`,
        hint: "put it there, or take the picture out of the text",
      });
      continue;
    }
    const size = found instanceof Uint8Array ? found.length : found.tooLarge;
    if (!(found instanceof Uint8Array) || size > LARGEST_PHOTOGRAPH) {
      say({
        code: "photograph-size",
        text: `${path} has ${kilobytes(size)} kB; at most ${kilobytes(LARGEST_PHOTOGRAPH)}`,
        hint: "save it smaller: 1200 dots on the longer side are enough for a page",
      });
      continue;
    }
    const type = typeOf(found);
    if (!type) {
      say({
        code: "photograph-kind",
        text: `${path} is no png, jpeg or webp picture, whatever its name says`,
        hint: "save it as one of these",
      });
      continue;
    }
    together += size;
    photographs.set(path, { path, bytes: found, data: `data:image/${type};base64,${base64(found)}` });
  }
  const last = Object.values(wanted).at(-1);
  if (together > LARGEST_TOGETHER && last) {
    const text = `the photographs together have ${kilobytes(together)} kB; at most ${kilobytes(LARGEST_TOGETHER)}`;
    messages.push(
      messageOf({ code: "photograph-size", text, hint: "save them smaller, or leave some out" }, "", last),
    );
  }
  return { photographs, messages };
}

const kilobytes = (bytes: number): string => `${Math.ceil(bytes / 1024)}`;

/** The kind by the first bytes. */
function typeOf(bytes: Uint8Array): "png" | "jpeg" | "webp" | undefined {
  const begins = (at: number, ...wanted: number[]): boolean =>
    wanted.every((byte, i) => bytes[at + i] === byte);
  if (begins(0, 0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a)) return "png";
  if (begins(0, 0xff, 0xd8, 0xff)) return "jpeg";
  if (begins(0, 0x52, 0x49, 0x46, 0x46) && begins(8, 0x57, 0x45, 0x42, 0x50)) return "webp";
  return undefined;
}
