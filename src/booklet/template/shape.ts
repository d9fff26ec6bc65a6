/** The shapes of what a template may name: what can be printed, asked for, gone through, or looked into. */

/** A value of the plan; words; yes or no; names inside a name; a list of items. */
export type Named = "value" | "words" | "flag" | Names | List;

/** Names inside a name, as `waist` holds `seam`. The name `*` stands for any whole number. */
export interface Names {
  readonly names: ReadonlyMap<string, Named>;
}

export interface List {
  readonly item: Names;
}

export const isNames = (named: Named): named is Names => typeof named === "object" && "names" in named;
export const isList = (named: Named): named is List => typeof named === "object" && "item" in named;

/** What stands at a path inside names; undefined where nobody knows it. */
export function named(names: Names, path: string): Named | undefined {
  let at: Named = names;
  for (const step of path.split(".")) {
    const inside: Names | undefined = isNames(at)
      ? at
      : isList(at) && /^\d+$/.test(step)
        ? anyItem(at)
        : undefined;
    const next: Named | undefined =
      inside?.names.get(step) ?? (/^\d+$/.test(step) ? inside?.names.get("*") : undefined);
    if (next === undefined) return undefined;
    at = next;
  }
  return at;
}

const anyItem = (list: List): Names => ({ names: new Map([["*", list.item]]) });

/** Every path that leads to something printable, to a flag or to a list, for finding the nearest. */
export function pathsOf(names: Names, before = ""): string[] {
  return [...names.names].flatMap(([name, inside]) =>
    isNames(inside) ? pathsOf(inside, `${before}${name}.`) : [`${before}${name}`],
  );
}

/** A tree of names out of dotted paths. Later ones are put beside earlier ones; none is taken away. */
export function treeOf(paths: Iterable<readonly [path: string, named: Named]>, base?: Names): Names {
  const names = new Map(base?.names ?? []);
  const inside = new Map<string, [string, Named][]>();
  for (const [path, what] of paths) {
    const dot = path.indexOf(".");
    if (dot < 0) {
      if (!names.has(path)) names.set(path, what);
      continue;
    }
    const first = path.slice(0, dot);
    const list = inside.get(first) ?? [];
    list.push([path.slice(dot + 1), what]);
    inside.set(first, list);
  }
  for (const [first, list] of inside) {
    const before = names.get(first);
    if (before !== undefined && !isNames(before)) continue;
    names.set(first, treeOf(list, before));
  }
  return { names };
}
