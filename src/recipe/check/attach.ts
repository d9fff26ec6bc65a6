/** The opening (trade: setting, attaching, closing). */

import { printExactly } from "../../quantity/print.ts";
import { add, div, less, plain } from "../../quantity/quantity.ts";
import type { Checking } from "./checking.ts";

export function checkAttach({ values, written, say, sayOfKey }: Checking): void {
  checkWaists({ values, written, say, sayOfKey });
  checkWaistEdge({ values, written, say, sayOfKey });
  const { at } = values.attach?.opening ?? {};
  if (at === undefined) return;
  const off = at === "front-left" || at === "front-right";
  if (values.attach?.to === "part-band" && !off) {
    sayOfKey(written("attach.opening") ? "attach.opening" : "attach.to", {
      code: "part-band-opening",
      text: `a part band runs from centre front to an opening at the side of the front, and this skirt opens at ${at}`,
      expected: "an opening at front-left or front-right",
      hint: "write opening: {at: front-left, from-centre: 5 in}, or to: bodice-edge, or to: waistband",
    });
  }
  const given = written("attach.opening.from-centre");
  if (off && !given) {
    sayOfKey("attach.opening", {
      code: "no-from-centre",
      text: `an opening at ${at} needs its distance from centre front`,
      hint: `write opening: {at: ${at}, from-centre: 5 in}`,
    });
  }
  if (!off && given) {
    sayOfKey("attach.opening.from-centre", {
      code: "from-centre",
      text: `from-centre is given for an opening at ${at}, which is a place already`,
      expected: "from-centre only with front-left or front-right",
      hint: "leave from-centre out, or write at: front-left or at: front-right",
    });
  }
  const { waist, ease } = values.wearer ?? {};
  const seam = values.attach?.made ?? (waist && ease && add(waist, ease));
  const from = values.attach?.opening?.["from-centre"];
  if (!off || !from || !seam) return;
  const half = div(seam, plain(2n));
  if (less(from, half)) return;
  say("attach.opening.from-centre", {
    code: "from-centre",
    text: "the opening would lie at centre back or past it",
    expected: `less than half the waist seam, ${printExactly(half, values.show ?? "in")}`,
    hint: "check the distance, or write at: centre-back",
  });
}

/** Further hooks need a waistband; another waist needs something gauged, since laid pleats are laid anew for it. */
function checkWaists({
  values,
  written,
  sayOfKey,
}: Pick<Checking, "values" | "written" | "say" | "sayOfKey">): void {
  const to = values.attach?.to;
  if (written("attach.band.hook-sets") && to !== undefined && to !== "waistband") {
    sayOfKey("attach.band.hook-sets", {
      code: "hook-sets-off-band",
      text: `hook-sets are given, and a ${to} closes with its bodice`,
      expected: "hook-sets only with to: waistband",
      hint: "leave hook-sets out; list other waists to set it again for under attach.other-waists",
    });
  }
  const { method, zones } = values.fullness ?? {};
  const gauged = zones ? zones.some((zone) => zone?.set === "gauged") : method !== "pleated";
  if (written("attach.other-waists") && !gauged) {
    sayOfKey("attach.other-waists", {
      code: "other-waists-ungauged",
      text: "other-waists are given, and nothing is gauged: laid pleats are laid anew for another waist",
      expected: "other-waists only where something is gauged",
      hint: "leave other-waists out, and enter the new waist as attach.made when its edge is made",
    });
  }
}

/** A point needs a bodice edge, and its slants end before the sides. */
function checkWaistEdge({
  values,
  written,
  say,
  sayOfKey,
}: Pick<Checking, "values" | "written" | "say" | "sayOfKey">): void {
  if (!written("attach.waist-edge")) return;
  const to = values.attach?.to;
  if (to !== undefined && to !== "bodice-edge")
    sayOfKey("attach.waist-edge", {
      code: "waist-edge-off-bodice",
      text: `waist-edge is given, and a ${to} is straight`,
      expected: "waist-edge only with to: bodice-edge",
      hint: "write to: bodice-edge, or leave waist-edge out",
    });
  const from = values.attach?.["waist-edge"]?.["from-centre"];
  const { waist, ease } = values.wearer ?? {};
  if (!from || !waist || !ease) return;
  const quarter = div(add(waist, ease), plain(4n));
  if (less(from, quarter)) return;
  say("attach.waist-edge.from-centre", {
    code: "waist-edge-wide",
    text: "the slant of the point would begin at the side or behind it",
    expected: `less than a quarter of the waist, ${printExactly(quarter, values.show ?? "in")}`,
    hint: "check the distance: it is measured from centre front to one side",
  });
}
