/** The order of workings by what they are calculated from, and the circles among them. */

interface Depending {
  readonly name: string;
  readonly from: readonly string[];
}

/** Lines so that each comes after those it needs; and every circle once, as the names on it, the first again at its end. */
export function inOrderOfNeed<T extends Depending>(
  lines: readonly T[],
): { readonly order: readonly T[]; readonly circles: readonly (readonly string[])[] } {
  const byName = new Map(lines.map((line) => [line.name, line]));
  const state = new Map<string, "open" | "done">();
  const order: T[] = [];
  const circles: string[][] = [];
  for (const start of lines) {
    const way: { line: T; next: number }[] = [];
    const enter = (line: T): void => {
      state.set(line.name, "open");
      way.push({ line, next: 0 });
    };
    if (!state.has(start.name)) enter(start);
    for (let at = way.at(-1); at; at = way.at(-1)) {
      const name = at.line.from[at.next];
      at.next += 1;
      if (name === undefined) {
        way.pop();
        state.set(at.line.name, "done");
        order.push(at.line);
        continue;
      }
      const line = byName.get(name);
      if (!line) continue;
      if (state.get(name) === "open") {
        const names = way.map((step) => step.line.name);
        circles.push([...names.slice(names.indexOf(name)), name]);
      } else if (!state.has(name)) enter(line);
    }
  }
  return { order, circles };
}
