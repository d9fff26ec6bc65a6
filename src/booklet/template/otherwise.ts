/** A value printed otherwise than by its own style: in other units, on the tape, up to a step, exactly. It still opens its working. */
import { decimal, printExactly, vulgar } from "../../quantity/print.ts";
import { LENGTH, PLAIN, type Quantity } from "../../quantity/quantity.ts";
import { readQuantity } from "../../quantity/read.ts";
import { roundTo } from "../../quantity/tape.ts";
import { UNITS } from "../../quantity/units.ts";
import type { Value } from "../../solve/plan.ts";
import { marked } from "../marks.ts";
import { Printed } from "../printed.ts";
import { Ready } from "./ready.ts";
import { TemplateError } from "./tree.ts";

type Given = readonly unknown[];
type Whole = Readonly<Record<string, unknown>>;

function printedOf(given: unknown, helper: string): Value {
  if (given instanceof Printed) return given.value;
  throw new TemplateError(`{{${helper}}} is given what this garment has no value for`, {
    code: "no-value",
    hint: "write it inside {{#if its.name}} … {{/if}}",
  });
}

function lengthOf(given: unknown, helper: string): Value {
  const value = printedOf(given, helper);
  if (value.quantity.dim === LENGTH) return value;
  throw new TemplateError(`{{${helper}}} takes a length, and ${value.name} is none`, { code: "helper" });
}

const again = ({ name }: Value, text: string): Ready => new Ready(marked(name, text));

const unitOf = (whole: Whole): "in" | "cm" =>
  (whole.is as { readonly metric?: boolean } | undefined)?.metric ? "cm" : "in";

/** `{{in length "cm"}}`: as it is, in inches or centimetres. */
export function inUnits([given, unit]: Given): Ready {
  const value = lengthOf(given, "in");
  if (unit !== "in" && unit !== "cm") {
    throw new TemplateError(`${JSON.stringify(String(unit))} is neither "in" nor "cm"`, { code: "helper" });
  }
  return again(value, printExactly(value.quantity, unit));
}

/** `{{onTape length}}`: the nearest mark of the recipe's tape; half-way between two, the even one. */
export function onTape([given]: Given, whole: Whole): Ready {
  const value = lengthOf(given, "onTape");
  const tape = printedOf(whole.tape, "onTape").quantity;
  return again(value, printExactly(roundTo(value.quantity, tape), unitOf(whole)));
}

/** `{{upTo value "1/4 in"}}`: rounded up to whole steps, printed in the step's own unit. */
export function upTo([given, step]: Given): Ready {
  const value = printedOf(given, "upTo");
  const { quantity } = value;
  const text = String(step);
  if (quantity.dim !== LENGTH && quantity.dim !== PLAIN) {
    throw new TemplateError(`{{upTo}} takes a length or a number, and ${value.name} is neither`, {
      code: "helper",
    });
  }
  const reading = readQuantity(text, quantity.dim);
  if (!reading.ok || reading.value.value.compare(0) <= 0) {
    throw new TemplateError(reading.ok ? "the step must be above 0" : reading.error, {
      code: "helper",
      hint:
        quantity.dim === LENGTH
          ? 'write it like {{upTo skirt.round "1/4 in"}}'
          : 'write it like {{upTo bows "2"}}',
    });
  }
  return again(value, inStepsOf(roundTo(quantity, reading.value, "up"), text));
}

function inStepsOf(q: Quantity, step: string): string {
  if (q.dim === PLAIN) return vulgar(q.value);
  const form = /[^\d\s./½⅓⅔¼¾⅛⅜⅝⅞][^\d]*$/.exec(step)?.[0].trim() ?? "in";
  const unit = UNITS.get(form)?.size;
  if (unit?.equals("914.4")) return `${vulgar(q.value.div(unit))} yd`;
  if (unit?.equals(1000)) return `${decimal(q.value.div(unit), 6)} m`;
  return printExactly(q, unit?.equals(1) || unit?.equals(10) ? "cm" : "in");
}

/** `{{exactly value}}`: nothing rounded to the tape; a decimal that does not end is cut at six places. */
export function exactly([given]: Given, whole: Whole): Ready {
  const value = printedOf(given, "exactly");
  const { quantity, shown } = value;
  if (quantity.dim === LENGTH) return again(value, printExactly(quantity, unitOf(whole)));
  return again(value, quantity.dim === PLAIN ? vulgar(quantity.value) : shown);
}
