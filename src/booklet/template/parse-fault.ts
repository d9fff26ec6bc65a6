/** What Handlebars' parser finds wrong, in words for a maker and with its place. */
import { nesting, placeOfTag } from "./nesting.ts";
import { TemplateError } from "./tree.ts";

/** Handlebars' parser says where in its own words; only the place is taken from them. */
export function faultOf(error: Error & { lineNumber?: number }, text: string): TemplateError {
  const found = /Parse error on line (\d+):\n([^\n]*)\n(-*)\^/.exec(error.message);
  const mismatch = /^(\S+) doesn't match (\S+)(?: - (\d+):(\d+))?/.exec(error.message);
  if (mismatch) {
    const [, opened, closed, line, column] = mismatch;
    return new TemplateError(`{{#${opened}}} is closed by {{/${closed}}}`, {
      at: [Number(line ?? 1), Number(column ?? 0) + 1, 1],
      hint: `write {{/${opened}}} where it ends`,
    });
  }
  const open = /got 'EOF'/.test(error.message) ? nesting(text).open.at(-1) : undefined;
  if (open) {
    return new TemplateError(`{{#${open.name}}} is opened here and not closed`, {
      at: placeOfTag(text, open),
      hint: `write {{/${open.name}}} where it ends`,
    });
  }
  const line = Number(found?.[1] ?? error.lineNumber ?? 1);
  return new TemplateError("the curly brackets here cannot be read", {
    at: [line, ...spanIn(text.split("\n")[line - 1] ?? "", found?.[2]?.slice(found[3]?.length) ?? "")],
    hint: "a value is {{its.name}}; what opens with {{#if}} or {{#each}} ends with {{/if}} or {{/each}}",
  });
}

/** Where on a line the parser stopped: it says what comes next, twenty characters of it. Else the first tag of the line. */
function spanIn(line: string, next: string): [column: number, length: number] {
  const upTo = next.replace(/\.\.\.$/, "").slice(0, 20);
  const at = upTo === "" ? -1 : line.indexOf(upTo);
  if (at >= 0) return [at + 1, 1];
  const tag = /\{\{[^{}]*(?:\}\})?/.exec(line);
  return tag ? [tag.index + 1, tag[0].length] : [1, 1];
}
