/** Where in a text node's value a place of the Markdown lies. */

/** A character written by its name or number. */
const REFERENCE = /^&(?:#\d{1,7}|#[xX][\da-fA-F]{1,6}|[A-Za-z]\w*);/;

/**
 * The index in `value` of the source's place `at`.
 *
 * @param source the Markdown the text was parsed from, from its first character to its last
 * @param at a place in `source`, from 0
 * @throws Error where source and value do not agree: a template writes something this cannot follow
 */
export function indexIn(value: string, source: string, at: number): number {
  let index = 0;
  let from = 0;
  while (from < at) {
    const letter = source[from];
    const reference = letter === "&" ? REFERENCE.exec(source.slice(from))?.[0] : undefined;
    if (reference) {
      index += 1;
      from += reference.length;
    } else if (letter === value[index]) {
      index += 1;
      from += 1;
    } else if (letter === "\\" || letter === " " || letter === "\t" || letter === ">") from += 1;
    else throw new Error(`cannot follow "${source.slice(0, 60)}" in "${value.slice(0, 60)}"`);
  }
  return index;
}
