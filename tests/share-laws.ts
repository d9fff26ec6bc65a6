/** Laws of fullness thrown to the back, from plan.json's own data and fraction.js alone. */
import Fraction from "fraction.js";
import type { planJson } from "../src/solve/json.ts";

type Json = ReturnType<typeof planJson>;
const F = (text: string): Fraction => new Fraction(text);

/** So many pleats a part must have before its bites can be told from those beside it. */
const FEW = 8;

/** Every law of these that does not hold, in words. */
export function brokenShare(json: Json): string[] {
  const share = json.values["fullness.backShare"];
  if (!share) return [];
  const broken: string[] = [];
  const law = (holds: boolean, words: string): void => {
    if (!holds) broken.push(words);
  };
  const value = (name: string): Fraction => F((json.values[name] as { exact: string }).exact);
  const waist = value("waist.seam");
  let at = F("0");
  let [behind, all] = [F("0"), F("0")];
  const gauged = json.sections.flatMap((section) => {
    const from = at;
    at = at.add(section.waist);
    if (!("bites" in section)) return [];
    const middle = from.add(F(section.waist).div(2)).div(waist);
    all = all.add(section.cloth);
    const back = middle.compare("1/4") > 0 && middle.compare("3/4") < 0;
    if (back) behind = behind.add(section.cloth);
    return [{ ...section, from, to: at, back }];
  });
  law(behind.equals(all.mul(F(share.exact))), "the back-share of the gauged cloth lies behind the sides");
  const tape = value("tape");
  if (json.messages.some(({ code }) => code === "back-share-step")) return broken;
  for (const [i, section] of gauged.entries()) {
    const next = gauged[i + 1];
    if (!next || !section.to.equals(next.from) || section.back === next.back) continue;
    if (section.pleats < FEW || next.pleats < FEW) continue;
    law(section.style === next.style, `the ${section.name} and the ${next.name} are sewn alike`);
    if (json.values["section.lines"]) continue;
    const bites = (marks: readonly string[]): Fraction[] =>
      marks.slice(1).map((mark, n) =>
        F(mark)
          .sub(marks[n] as string)
          .div(tape)
          .floor(),
      );
    const last = bites(section.marks).at(section.style === "even" ? -1 : -2) as Fraction;
    const first = bites(next.marks)[0] as Fraction;
    law(last.sub(first).abs().compare(1) <= 0, `no step at the side: ${section.name}, ${next.name}`);
  }
  return broken;
}
