/** The list of messages under the text; each goes to its place. */

import { faultWords } from "../../page/fault-words.ts";
import { button, make } from "../../page/make.ts";
import type { Message } from "../../recipe/message.ts";
import { RECIPE } from "./desk.ts";

const SIGNS = { error: "✗", warning: "!", note: "i" } as const;

/** How many there are, in words. */
export function counted(messages: readonly Message[]): string {
  const of = (level: Message["level"], one: string): string => {
    const n = messages.filter((message) => message.level === level).length;
    return n === 0 ? "" : `${n} ${n === 1 ? one : `${one}s`}`;
  };
  return [of("error", "error"), of("warning", "warning"), of("note", "note")].filter(Boolean).join(", ");
}

export function listMessages(
  parent: HTMLElement,
  messages: readonly Message[],
  go: (message: Message) => void,
): void {
  const words = messages.length === 0 ? "No messages." : `${counted(messages)}:`;
  const items = messages.map((message) => {
    const { place, level } = message;
    const where = !place
      ? ""
      : place.file === RECIPE
        ? `line ${place.line}: `
        : `${place.file}, line ${place.line}: `;
    const text = `${SIGNS[level]} ${where}${faultWords(message)}`;
    const inner = place?.file === RECIPE ? button(document, text, () => go(message)) : text;
    return make(document, "li", { class: level }, inner);
  });
  parent.replaceChildren(
    make(document, "p", { role: "status", class: "quiet" }, words),
    ...(items.length > 0 ? [make(document, "ul", {}, ...items)] : []),
  );
}
