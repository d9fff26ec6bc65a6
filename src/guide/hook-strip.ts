/** A strip for the hooks of the placket: their places from the waist seam down. */

import { written } from "../figure/svg.ts";
import { printPart } from "../quantity/print.ts";
import { mul, plain, type Quantity, toCount } from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { dots, lines, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";
import { across, LONGEST, outline, type StripTile, wordsFrom } from "./strip.ts";
import { tilesOf } from "./tiles.ts";

const HEIGHT = 17;
const GROUP = "hook strip for the placket";

/** The hooks' places from the waist seam, by the plan's own spacing. */
export function placketHooks({ values }: Plan): Quantity[] {
  const value = (name: string): Quantity | undefined => values.get(name)?.quantity;
  const first = value("hooks.placketFirst");
  if (first) return [first];
  const [apart, count] = [value("hooks.placketApart"), value("hooks.placket")];
  if (!apart || !count) return [];
  return Array.from({ length: toCount(count) }, (_, i) => mul(apart, plain(i)));
}

/** The strip, in tiles where the placket is longer than the page. */
export function hookStrip(plan: Plan): Cut[] {
  const hooks = placketHooks(plan);
  const last = hooks.at(-1);
  if (!last || last.value.n === 0n) return [];
  const tiles = tilesOf(hooks, last, LONGEST);
  const length = printPart(last, { show: plan.recipe.show, tape: plan.recipe.tape });
  const many = hooks.length > 1;
  const text = many
    ? `${hooks.length} hooks, ${plan.values.get("hooks.placketApart")?.shown} apart, the last ${length} below the waist seam. Lay the left-hand end line to the waist seam, the strip down the placket.`
    : `One hook, ${length} below the waist seam: lay the left-hand end line to the waist seam, the strip down the placket.`;
  const lead = paragraph(`Hooks of the placket. ${text}`, SHEET.width);
  return [
    {
      group: GROUP,
      height: lead.height + 1,
      leads: true,
      words: text,
      draw: (top) => lead.draw(0, top),
    },
    ...tiles.map((tile, index) => {
      const strip = { tile, index, count: tiles.length, letter: "H", way: "right" as const, height: HEIGHT };
      return tileCut(strip);
    }),
  ];
}

function tileCut(strip: StripTile): Cut {
  const { tile, index, count, letter } = strip;
  const which = count > 1 ? `${letter} ${index + 1} of ${count}` : letter;
  const held = tile.marks.map(({ n }) => n).join(", ");
  return {
    group: GROUP,
    height: HEIGHT + 3,
    words: `Tile ${which}: ${held ? `hook ${held}` : "no hook"}.`,
    draw: (top) => {
      const places = tile.marks.map(({ at, n }) => ({ x: across(strip, at), n }));
      return [
        ...outline(strip, top),
        lines(places.map(({ x }) => upright(x, top, top + 8)).join("")),
        dots(places.map(({ x }) => `M${written(x)} ${written(top + 5)}h0`).join(""), 1.2),
        ...places.map(({ x, n }) =>
          n === 1 && places.length > 1
            ? words(x + 0.8, top + 8, String(n), { size: TEXT.small })
            : words(x - 0.8, top + 8, String(n), { size: TEXT.small, anchor: "end" }),
        ),
        words(
          wordsFrom(strip) + 3,
          top + HEIGHT - 3,
          `${which} · hooks of the placket${index === 0 ? ": this end at the waist seam" : ""}`,
          {
            bold: true,
          },
        ),
      ];
    },
  };
}
