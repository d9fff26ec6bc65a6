/** A value as a template prints it. */
import type { Value } from "../solve/plan.ts";
import { marked } from "./marks.ts";

/** Stands in the context for a plan value: prints marked with its name, and lets helpers reach the quantity. */
export class Printed {
  readonly value: Value;
  constructor(value: Value) {
    this.value = value;
  }
  toString(): string {
    return marked(this.value.name, this.value.shown);
  }
}
