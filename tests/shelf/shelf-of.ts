/** A folder of invented garments as a catalogue finds it: plan.json files, made from one plan with other names and measures. */
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { planJson } from "../../src/solve/json.ts";
import { planOf } from "../recipes.ts";

const FIBRES = ["cotton", "linen", "wool", "silk", "mixed"];
const METHODS = ["gauged", "pleated", "pleated-gauged-back", "flat, knife, gauged"];
const STATES = ["planned", "trial proved", "in work", "made"];

/** Writes `count` plans under a folder; the seventh of every ten is of a silk. */
export function shelfOf(folder: string, count: number): void {
  const { garment, values, ...rest } = planJson(planOf(), "0.1.0");
  for (let i = 0; i < count; i += 1) {
    const waist = `${100 + (i % 40)}/4`;
    const at = join(folder, `garment-${String(i).padStart(4, "0")}`);
    mkdirSync(join(at, "figures"), { recursive: true });
    const plan = {
      ...rest,
      recipe: `Skirt number ${i} (invented)`,
      garment: {
        ...garment,
        year: 1830 + (i % 40),
        fibre: FIBRES[i % 5],
        method: METHODS[i % 4],
        state: STATES[(i >> 2) % 4],
      },
      values: {
        ...values,
        "waist.seam": { ...values["waist.seam"], exact: waist, shown: `${25 + (i % 40) / 4} in` },
      },
    };
    writeFileSync(join(at, "plan.json"), JSON.stringify(plan));
    writeFileSync(
      join(at, "figures", "finished.svg"),
      '<svg xmlns="http://www.w3.org/2000/svg" width="360" height="469"><path d="M150 50h60l90 300H60z"/></svg>',
    );
    // Every second has the small picture for lists; the others are older.
    if (i % 2 === 1)
      writeFileSync(
        join(at, "figures", "picture.svg"),
        '<svg xmlns="http://www.w3.org/2000/svg" width="150" height="100"><path d="M70 10v10" fill="none" stroke="currentColor" stroke-width="0.5"/><path d="M60 10h30l30 80h-90z" fill="none" stroke="currentColor"/></svg>',
      );
  }
}
