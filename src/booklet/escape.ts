/** Text of the maker's own put into Markdown so that it stays text. */

/** Escapes what CommonMark and pipe tables would read as markup; line breaks become spaces. */
export function escapeMarkdown(text: string): string {
  return text
    .replace(/\s*[\r\n]+\s*/g, " ")
    .replace(/[\\`*_[\]<>|~#&{}]/g, "\\$&")
    .replace(/^(-(?=[-\s]|$)|\+(?=\s|$)|=)/, "\\$1")
    .replace(/^(\d+)(?=[.)](?:\s|$))/, "$1\\");
}
