/** What is told of one project once it is done: plain data, so that it may come from another thread, or from an earlier run. */
import { isAsked, MEASURE_YOUR_OWN } from "../booklet/measure-your-own.ts";
import { sheetsOf } from "../booklet/sheet-list.ts";
import { type Message, messageText } from "../recipe/message.ts";
import type { Plan } from "../solve/plan.ts";
import { atPath } from "./build.ts";
import { isBuilt, isWhole, type Outcome } from "./outcome.ts";

export interface Report {
  readonly name: string;
  readonly shown: string;
  /** Is anything there to be written, and is everything there that was asked for? */
  readonly built: boolean;
  readonly whole: boolean;
  /** Lines for the user, each for its stream, in their order. */
  readonly lines: readonly (readonly [stream: "out" | "err", line: string])[];
  /** The same for a program, as `--json` gives it. */
  readonly json: object;
  /** Why it could not be printed, when that was asked. */
  readonly notPrinted?: string;
  /** Nothing had changed since it was built: it was left as it stands. */
  readonly kept?: boolean;
}

/**
 * @param written the folder its booklet was written to, as the user named it; undefined where nothing was to be written
 * @param only the one size that was wanted
 */
export function reportOf(outcome: Outcome, written: string | undefined, only: string | undefined): Report {
  const { project, notPrinted } = outcome;
  return {
    name: project.name,
    shown: project.shown,
    built: isBuilt(outcome),
    whole: isWhole(outcome),
    lines: [...said(outcome), ...done(outcome, written, only)],
    json: jsonOf(outcome),
    ...(notPrinted === undefined ? {} : { notPrinted }),
  };
}

/** Messages, each with its place by the path the user gave. */
const said = ({ project, messages, sources }: Outcome): Report["lines"] =>
  messages.map((message) => [
    "err",
    messageText(atPath(message, project), sources.get(message.place?.file ?? "")),
  ]);

/** An outcome's messages as text. */
export const outcomeText = (outcome: Outcome): string =>
  said(outcome)
    .map(([, line]) => line)
    .join("\n");

/** How it went. */
function done(outcome: Outcome, written: string | undefined, only: string | undefined): Report["lines"] {
  const { project, sizes = [] } = outcome;
  if (!isBuilt(outcome)) return [["err", `${project.shown}: not built; an older booklet is left as it was`]];
  const lines: [stream: "out" | "err", line: string][] = [];
  for (const { name, plan } of sizes)
    if (!plan)
      lines.push([
        "err",
        `${project.shown}: size ${name} not built; an older booklet of it is left as it was`,
      ]);
  if (written === undefined) return isWhole(outcome) ? [["out", `${project.shown}: no errors`]] : lines;
  const first = outcome.base ?? outcome.plan?.recipe ?? sizes.find(({ plan }) => plan)?.plan?.recipe;
  const own =
    first && isAsked(first, sizes.length > 0)
      ? `, ${written}/${MEASURE_YOUR_OWN} (to a reader's own measures)`
      : "";
  if (sizes.length === 0)
    lines.push(["out", `open ${written}/booklet.html${sheetsIn(written, outcome.plan)}${own}`]);
  else if (only === undefined)
    lines.push(["out", `open ${written}/booklet.html (all sizes), ${written}/sizes.html (the table)${own}`]);
  for (const { name, folder, plan } of sizes)
    if (plan)
      lines.push([
        "out",
        `open ${written}/${folder}/booklet.html (size ${name})${sheetsIn(`${written}/${folder}`, plan)}`,
      ]);
  if (only !== undefined) lines.push(["out", "the other sizes and the table of all are left as they were"]);
  for (const file of outcome.printed ?? []) lines.push(["out", `print ${written}/${file}`]);
  return lines;
}

/** The sheets of one page that lie beside a booklet. */
const sheetsIn = (folder: string, plan: Plan | undefined): string =>
  plan
    ? sheetsOf(plan.recipe)
        .map(({ file, title }) => `, ${folder}/${file} (${title.toLowerCase()})`)
        .join("")
    : "";

function jsonOf(outcome: Outcome): object {
  const { project, messages, sizes: ofSizes, printed, notPrinted } = outcome;
  return {
    recipe: project.shown,
    ok: isWhole(outcome),
    ...(ofSizes ? { sizes: ofSizes.map(({ name, plan }) => ({ name, ok: plan !== undefined })) } : {}),
    ...(printed ? { printed } : {}),
    ...(notPrinted ? { notPrinted } : {}),
    messages: messages.map((message) => messageJson(atPath(message, project))),
  };
}

/** A message as `--json` gives it. */
export function messageJson({ code, level, text, place, expected, hint, path, sizes }: Message): object {
  return {
    code,
    level,
    text,
    place: place ?? null,
    path: path ?? null,
    expected: expected ?? null,
    hint: hint ?? null,
    ...(sizes ? { sizes } : {}),
  };
}
