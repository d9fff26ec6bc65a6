/** The lines of a body, and which of them lie in fenced blocks. */

export interface Line {
  readonly text: string;
  /** Number in the body, from 1. */
  readonly number: number;
  /** Inside a fenced block, its fences too. */
  readonly fenced: boolean;
}

export interface Fence {
  /** What stands behind the opening fence. */
  readonly info: string;
  readonly open: Line;
  /** The lines between the fences. */
  readonly lines: readonly Line[];
  readonly isClosed: boolean;
}

const OPENING = /^ {0,3}(`{3,}|~{3,})[ \t]*([^`]*)$/;

/** Lines and fenced blocks as CommonMark reads them at the left margin. */
export function scan(text: string): { readonly lines: readonly Line[]; readonly fences: readonly Fence[] } {
  const lines: Line[] = [];
  const fences: Fence[] = [];
  let open: { fence: string; info: string; line: Line; inside: Line[] } | undefined;
  const close = (isClosed: boolean): void => {
    if (open) fences.push({ info: open.info, open: open.line, lines: open.inside, isClosed });
    open = undefined;
  };
  text.split(/\r?\n/).forEach((line, i) => {
    const number = i + 1;
    if (open) {
      const { fence } = open;
      const shut = /^ {0,3}(`{3,}|~{3,})[ \t]*$/.exec(line)?.[1];
      const isShut = shut !== undefined && shut[0] === fence[0] && shut.length >= fence.length;
      const found = { text: line, number, fenced: true };
      lines.push(found);
      if (isShut) close(true);
      else open.inside.push(found);
      return;
    }
    const begin = OPENING.exec(line);
    const found = { text: line, number, fenced: begin !== null };
    lines.push(found);
    if (begin) open = { fence: begin[1] as string, info: (begin[2] ?? "").trim(), line: found, inside: [] };
  });
  close(false);
  return { lines, fences };
}
