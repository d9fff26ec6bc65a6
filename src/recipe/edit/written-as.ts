/** A text as YAML writes it. */

const PLAIN = /^[\w(.+½¼¾⅓⅔⅛⅜⅝⅞][^:#"'{}[\],&*!|>@`\\\p{Cc}]*$/u;

/** Plain where YAML reads it back as the same text, in quotes otherwise, or where it was in quotes before. */
export function written(value: string, before?: string): string {
  if (before === "QUOTE_SINGLE" && !/[\p{Cc}]/u.test(value)) return `'${value.replaceAll("'", "''")}'`;
  if (before === "QUOTE_DOUBLE") return JSON.stringify(value);
  return PLAIN.test(value) && !/\s$/.test(value) && value !== "---" && value !== "..."
    ? value
    : JSON.stringify(value);
}
