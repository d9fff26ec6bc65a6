/** Text as HTML has it, between tags and inside an attribute's quotes. */
const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** A text that stays text, whatever is in it. */
export const escapeHtml = (text: string): string =>
  text.replace(/[&<>"]/g, (letter) => ESCAPES[letter] as string);
