/** Keys of the recipe that can be read but are not worked out yet. Said plainly, so that nothing is left out in silence. */
import type { Recipe } from "../recipe/recipe.ts";
import type { Work } from "./context.ts";

interface NotYet {
  readonly path: string;
  readonly asked: (recipe: Recipe) => boolean;
  readonly what: string;
  readonly instead: string;
}

const NOT_YET: readonly NotYet[] = [
  {
    path: "garment",
    asked: (r) => r.garment === "petticoat",
    what: "a petticoat",
    instead: "write garment: skirt",
  },
  {
    path: "wearer.waist-height",
    asked: (r) => r.wearer.waistToFloor === undefined,
    what: "a length estimated over a hoop",
    instead: "measure waist-to-floor over the hoop and give it",
  },
  {
    path: "fullness.method",
    asked: (r) => r.fullness.zones === undefined && (r.fullness.method ?? "gauged") !== "gauged",
    what: "a skirt not gauged all round",
    instead: "write method: gauged",
  },
  {
    path: "fullness.zones",
    asked: (r) => r.fullness.zones !== undefined,
    what: "a waist in zones",
    instead: "leave zones out and write method: gauged",
  },
  {
    path: "fullness.follow-repeat",
    asked: (r) => r.fullness.followRepeat,
    what: "gauging locked to the checks",
    instead: "write follow-repeat: false",
  },
  {
    path: "attach.to",
    asked: (r) => r.attach.to !== "waistband",
    what: "an edge other than a waistband",
    instead: "write to: waistband",
  },
  {
    path: "attach.piping",
    asked: (r) => r.attach.piping !== undefined,
    what: "piping",
    instead: "leave piping out",
  },
  {
    path: "skirt.tucks",
    asked: (r) => r.skirt.tucks !== undefined,
    what: "tucks",
    instead: "leave tucks out",
  },
  {
    path: "skirt.flounces",
    asked: (r) => r.skirt.flounces !== undefined,
    what: "flounces",
    instead: "leave flounces out",
  },
  { path: "skirt.pocket", asked: (r) => r.skirt.pocket, what: "a pocket", instead: "write pocket: false" },
];

/** Refuses what this version does not work out; true when everything asked for is. */
export function checkWorkedOut({ recipe, say }: Work): boolean {
  const asked = NOT_YET.filter((item) => item.asked(recipe));
  for (const { path, what, instead } of asked) {
    say({
      code: "not-yet",
      level: "error",
      path,
      text: `${what} is not worked out by this version`,
      hint: instead,
    });
  }
  return asked.length === 0;
}
