/** A template's fault as a message with its place in the file. */
import type { Message } from "../../recipe/message.ts";
import { messageOf } from "../../recipe/problem.ts";
import type { TemplateError } from "../template/tree.ts";

/** `line` is the line of the file that the template's text starts on. */
export function faultMessage(
  { code, message, hint, at }: TemplateError,
  file: string,
  line: number,
): Message {
  const [row, column, length] = at ?? [1, 1, 1];
  const place = { file, line: row + line - 1, column, length };
  return messageOf({ code, text: message, ...(hint === undefined ? {} : { hint }) }, "", place);
}
