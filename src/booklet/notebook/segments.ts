/** A body's tree cut into segments: at its chapters, at its `##` headings, and at choices that hold either. */
import type { Part, Template } from "../template/tree.ts";
import type { Segment } from "./notebook.ts";

/** Makes a note of a stretch of the tree. */
export type ToNote = (template: Template) => Segment;

/** Cuts a tree. What is blank becomes no note. */
export function segmentsOf(template: Template, note: ToNote): readonly Segment[] {
  const cutter = new Cutter(note);
  for (const part of template) cutter.take(part);
  return cutter.end();
}

const HEADING = /^ {0,3}##(?:[ \t]|$)/;
const FENCE = /^ {0,3}(?:`{3,}|~{3,})/;

class Cutter {
  private readonly note: ToNote;
  private readonly segments: Segment[] = [];
  private open: Part[] = [];
  private atLineStart = true;
  private isFenced = false;

  constructor(note: ToNote) {
    this.note = note;
  }

  take(part: Part): void {
    if (typeof part === "string") this.text(part);
    else if ("chapter" in part) {
      this.flush();
      this.segments.push(part);
      this.atLineStart = true;
    } else if ("if" in part && (cuts(part.do) || cuts(part.else))) {
      this.flush();
      const { if: about } = part;
      this.segments.push({
        if: about,
        do: segmentsOf(part.do, this.note),
        else: segmentsOf(part.else, this.note),
      });
      this.atLineStart = true;
    } else {
      this.open.push(part);
      this.atLineStart = "do" in part;
    }
  }

  end(): readonly Segment[] {
    this.flush();
    return this.segments;
  }

  private text(text: string): void {
    text.split(/(?<=\n)/).forEach((line, i) => {
      const begins = i > 0 || this.atLineStart;
      if (begins && FENCE.test(line)) this.isFenced = !this.isFenced;
      if (begins && !this.isFenced && HEADING.test(line)) this.flush();
      this.open.push(line);
    });
    this.atLineStart = text.endsWith("\n");
  }

  private flush(): void {
    const template = joined(this.open);
    this.open = [];
    if (template.some((part) => typeof part !== "string" || part.trim() !== ""))
      this.segments.push(this.note(template));
  }
}

/** Texts side by side as one. */
function joined(parts: readonly Part[]): Template {
  const out: Part[] = [];
  for (const part of parts) {
    const last = out.at(-1);
    if (typeof part === "string" && typeof last === "string") out[out.length - 1] = last + part;
    else out.push(part);
  }
  return out;
}

/** Does a branch hold a chapter or a heading of a section? */
const cuts = (template: Template): boolean =>
  template.some((part) => {
    if (typeof part === "string") return part.split("\n").some((line) => HEADING.test(line));
    if ("chapter" in part) return true;
    return "if" in part && (cuts(part.do) || cuts(part.else));
  });
