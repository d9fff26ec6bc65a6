/**
 * Papers that the program prints on by itself. A booklet carries a style for each, and none is at work: the reader who prints
 * by hand has her own paper. To print, one of them is put to work.
 */
import { papers } from "plainwork:page";

export type PaperName = "a4" | "letter" | "a5" | "half-letter";

/** The media of a style that is not at work. */
const UNUSED = "not all";

const opening = (name: string, media: string): string => `<style id="paper-${name}" media="${media}">`;

/** The styles of all papers, as they stand in a booklet's head. */
export const paperStyles = (): string[] =>
  papers.map(({ name, style }) => `${opening(name, UNUSED)}${style}</style>`);

/** What the page's policy must allow for them. */
export const paperHashes = (): string[] => papers.map(({ hash }) => hash);

/** A booklet's page as it is printed on this paper. */
export const pageOnPaper = (html: string, paper: PaperName): string =>
  html.replace(opening(paper, UNUSED), opening(paper, "print"));
