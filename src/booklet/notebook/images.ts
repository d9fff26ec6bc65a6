/**
 * What the Markdown parser finds in the maker's text: photographs of the project, with words for those who cannot see
 * them; and HTML and links that a booklet does without.
 */
import type { Definition, Html, Image, ImageReference, Link, Nodes } from "mdast";
import type { Message, Place } from "../../recipe/message.ts";
import { messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { parseMarkdown } from "../parse.ts";

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
  for (const image of found(parseMarkdown(text))) {
    const { start, end } = image.position ?? { start: { line: 1, column: 1 }, end: { line: 1, column: 2 } };
    const length = end.line === start.line ? Math.max(1, end.column - start.column) : 2;
    const place = span(start.line, start.column, length);
    const problem = problemOf(image);
    if (problem) messages.push(messageOf(problem, "", place));
    else if (image.type === "image" && !photographs.has(image.url)) photographs.set(image.url, place);
  }
  return { photographs, messages };
}

type Found = Image | ImageReference | Html | Link | Definition;

const LOOKED_FOR = new Set<string>(["image", "imageReference", "html", "link", "definition"]);

function* found(node: Nodes): Generator<Found> {
  const waiting: Nodes[] = [node];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    if (LOOKED_FOR.has(next.type)) yield next as Found;
    if ("children" in next) waiting.push(...[...next.children].reverse());
  }
}

/** A remark that no reader sees. */
const REMARK = /^<!--(?:(?!-->)[\s\S])*-->$/;

function problemOf(image: Found): Problem | undefined {
  if (image.type === "html") {
    return REMARK.test(image.value.trim())
      ? undefined
      : {
          code: "html",
          text: `${quoted(image.value)} is HTML`,
          hint: "write Markdown; a bare < is written \\<",
        };
  }
  if (image.type === "link" || image.type === "definition") {
    // Browsers pass over spaces and tabs in an address.
    const scheme = /^([a-z][a-z0-9+.-]*):/i.exec(image.url.replace(/[\p{Cc}\s]/gu, ""))?.[1]?.toLowerCase();
    return scheme === undefined || ["http", "https", "mailto"].includes(scheme)
      ? undefined
      : {
          code: "link",
          text: `${quoted(image.url)} cannot be linked to`,
          expected: "an address that begins with https: or mailto:",
        };
  }
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
