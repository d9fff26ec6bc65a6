/** Messages in words for a page. */
import type { Message } from "../recipe/message.ts";

/** A message as sentences: what was found, what was expected, what to do. */
export function faultWords({ text, expected, hint }: Message): string {
  const sentence = (words: string): string => `${words.charAt(0).toUpperCase()}${words.slice(1)}.`;
  return [sentence(text), expected && `Expected: ${expected}.`, hint && sentence(hint)]
    .filter(Boolean)
    .join(" ");
}
