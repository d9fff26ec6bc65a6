/** Pictures in the maker's text: photographs of the project, with words for those who cannot see them. Found by the Markdown parser. */
import type { Image, ImageReference, Nodes } from "mdast";
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { parseMarkdown } from "../html.ts";

/** A photograph's path: one file in photos/, plain letters, digits, hyphens, underscores and points. */
const PHOTOGRAPH = /^photos\/[A-Za-z0-9][\w-]*(?:\.[\w-]+)*\.(?:png|jpe?g|webp)$/i;

export interface FoundImages {
  /** Paths of photographs, and where each stands first. */
  readonly photographs: ReadonlyMap<string, Place>;
  readonly messages: readonly Message[];
}

/**
 * Photographs that a text asks for.
 *
 * @param text Markdown with Handlebars, whose tags are text to the parser
 * @param span a place in the file from a line of the text and a column
 */
export function findImages(
  text: string,
  span: (line: number, column: number, length: number) => Place,
): FoundImages {
  const photographs = new Map<string, Place>();
  const messages: Message[] = [];
  for (const image of imagesOf(parseMarkdown(text))) {
    const { start, end } = image.position ?? { start: { line: 1, column: 1 }, end: { line: 1, column: 2 } };
    const length = end.line === start.line ? Math.max(1, end.column - start.column) : 2;
    const place = span(start.line, start.column, length);
    const problem = problemOf(image);
    if (problem) messages.push(messageOf(problem, "", place));
    else if (image.type === "image" && !photographs.has(image.url)) photographs.set(image.url, place);
  }
  return { photographs, messages };
}

function* imagesOf(node: Nodes): Generator<Image | ImageReference> {
  const waiting: Nodes[] = [node];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (next.type === "image" || next.type === "imageReference") yield next;
    if ("children" in next) waiting.push(...[...next.children].reverse());
  }
}

function problemOf(image: Image | ImageReference): Problem | undefined {
  if (image.type === "imageReference") {
    return {
      code: "photograph",
      text: "this picture's file stands elsewhere",
      hint: "write it here, in round brackets: ![the bow, pinned](photos/bow.png)",
    };
  }
  const { url, alt } = image;
  if (/^figures\//.test(url)) {
    const name = /^figures\/([\w-]+)/.exec(url)?.[1] ?? "balance";
    return { code: "photograph", text: "a figure is put in by its name", hint: `write {{figure "${name}"}}` };
  }
  if (/^(?:[a-z][a-z0-9+.-]*:|\/\/)/i.test(url)) {
    return {
      code: "photograph",
      text: `${quoted(url)} leads out of the project`,
      expected: "a photograph in photos/ beside the recipe",
      hint: "save it there, and write ![what it shows](photos/its-name.jpg)",
    };
  }
  if (!PHOTOGRAPH.test(url)) {
    return {
      code: "photograph",
      text: `${quoted(url)} is not a photograph of this project`,
      expected: "a png, jpeg or webp file in photos/, its name of letters, digits and hyphens",
      hint: "write it like ![the bow, pinned](photos/bow.png)",
    };
  }
  if ((alt ?? "").trim() !== "") return undefined;
  return {
    code: "no-words",
    text: "this photograph has no words for those who cannot see it",
    expected: "what it shows, between the square brackets",
    hint: `write it like ![the bow, pinned](${url})`,
  };
}
