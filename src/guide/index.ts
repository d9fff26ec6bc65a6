/** Every guide of a garment: what is to be cut out, page after page. */
import type { Plan } from "../solve/plan.ts";
import { bandEnds } from "./band-ends.ts";
import { dogLegRing } from "./dog-leg-ring.ts";
import { facingEnd } from "./facing-end.ts";
import { gaugingCards } from "./gauging-card.ts";
import type { Cut, Guide } from "./guide.ts";
import { hookStrip } from "./hook-strip.ts";
import { markingStrips } from "./marking-strip.ts";
import { SHEET } from "./paper.ts";
import { pleatGauge } from "./pleat-gauge.ts";
import { pleatStrips } from "./pleat-strip.ts";
import { drawSheet, HEAD } from "./sheet.ts";

/** What this garment's guides hold: the small pieces first, so that they share a page. */
const cutsOf = (plan: Plan): readonly Cut[] => [
  ...bandEnds(plan),
  ...hookStrip(plan),
  ...facingEnd(plan),
  ...dogLegRing(plan),
  ...gaugingCards(plan),
  ...pleatGauge(plan),
  ...markingStrips(plan),
  ...pleatStrips(plan),
];

/** Fills pages from the top; what leads the next piece goes over the page with it. */
function pagesOf(cuts: readonly Cut[]): Cut[][] {
  const room = SHEET.height - HEAD;
  const pages: Cut[][] = [[]];
  let used = 0;
  cuts.forEach((cut, i) => {
    const next = cuts[i + 1];
    const wanted = cut.height + (cut.leads && next ? next.height : 0);
    if (used > 0 && used + wanted > room) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(cut);
    used += cut.height;
  });
  return pages.filter((page) => page.length > 0);
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Pages by the sections they were made from: a plan with a notebook's workings among its values has the same guides. */
const KNOWN = new WeakMap<Plan["sections"], readonly (readonly Cut[])[]>();

function pagesFor(plan: Plan): readonly (readonly Cut[])[] {
  const known = KNOWN.get(plan.sections);
  if (known) return known;
  const pages = pagesOf(cutsOf(plan));
  KNOWN.set(plan.sections, pages);
  return pages;
}

/** The guides of this plan, page by page. Cheap: a page is drawn when it is asked for. */
export function guidesOf(plan: Plan): readonly Guide[] {
  const pages = pagesFor(plan);
  return pages.map((cuts, i) => {
    const name = `guide-${i + 1}`;
    const title = capital([...new Set(cuts.map(({ group }) => group))].join("; "));
    const description = `True size. ${cuts.map(({ words }) => words).join(" ")}`;
    return {
      name,
      title,
      description,
      draw: () => drawSheet(plan, name, title, description, cuts, i + 1, pages.length),
    };
  });
}
