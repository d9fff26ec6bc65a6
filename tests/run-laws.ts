/** Laws of cloth that runs along the body, of borders and of shaded cloth, from first principles: no solver's code. */
import type { Quantity } from "../src/quantity/quantity.ts";
import type { Plan } from "../src/solve/plan.ts";
import { F, inches, type Laws, whole } from "./law.ts";

/** Does the cloth run along the body? */
export const runsAlong = ({ recipe }: Plan): boolean => recipe.skirt.run === "along";

/** Is a piece of the layout one of those that make the round? */
export const isRoundPiece = (name: string): boolean => /^(?:half breadth$|breadth |length )/.test(name);

/** Every length is a strip of the cloth from hem to top at one place across it; together they give the round that is wished. */
export function runLaws(laws: Laws): void {
  const { plan, value, has, law, same, notLess } = laws;
  shadeLaws(laws);
  law(has("run.length") === runsAlong(plan), "lengths only where the cloth runs along the body");
  if (!runsAlong(plan)) return;
  const { recipe, layout } = plan;
  const lengths = layout.pieces.filter(({ name }) => name.startsWith("length "));
  const [cut, start, width] = [value("breadths.cut"), value("run.start"), value("cloth.width")];
  same(F(lengths.length), value("skirt.lengths"), "as many lengths as are asked for");
  for (const piece of lengths) {
    same(inches(piece.width), cut, `${piece.name} is as wide as hem, skirt and turn-down`);
    same(inches(piece.x), start, `${piece.name} lies with the hem at one place of the cloth`);
  }
  notLess(width.sub(value("cloth.selvedge")), start.add(cut), "hem and top lie inside the other selvedge");
  same(value("run.beside").add(cut).add(start), width, "hem, skirt and strip beside make the cloth's width");
  const hem = recipe.skirt.hem.edge === "selvedge";
  if (hem) same(start, F(0), "the selvedge is the hem edge");
  if (hem) same(value("hem.allowance"), F(0), "a selvedge takes nothing for the hem");
  const joined = lengths.map(({ length }) => inches(length).sub(value("skirt.seam").mul(2)));
  const gives = joined.reduce((a, b) => a.add(b), F(0));
  const round = value("skirt.round");
  notLess(gives, round, "the lengths reach the round");
  notLess(value("tape").mul(lengths.length), gives.sub(round), "and are no longer than a mark each");
  notLess(round, value("skirt.roundWished"), "the round is what is wished, or more");
  const step = recipe.cloth.repeat?.match ? inches(recipe.cloth.repeat.down as Quantity) : value("tape");
  law(
    round.sub(value("skirt.roundWished")).compare(step.mul(lengths.length)) < 0,
    "by less than a step each",
  );
  if (recipe.cloth.repeat?.match) {
    law(whole(value("breadths.finished").div(step)), "a length is whole repeats between its seams");
    for (const { name, y } of lengths) law(whole(inches(y).div(step)), `${name} begins at the same line`);
  }
  borderLaws(laws);
}

/** The border's lower edge stands above the finished hem where it is said to, and is never cut into. */
function borderLaws({ plan, value, has, law, same, notLess }: Laws): void {
  const { border } = plan.recipe.cloth;
  law(has("border.above") === (border !== undefined), "a border's place only where there is one");
  if (!border) return;
  const hem = value("run.start").add(value("hem.allowance"));
  same(inches(border.fromEdge).sub(hem), value("border.above"), "the border above the finished hem");
  notLess(value("border.above"), F(0), "the border lies above the hem");
  if (border.aboveHem) same(value("border.above"), inches(border.aboveHem), "the border as it is wished");
  same(value("border.head"), value("border.above").add(inches(border.depth)), "the border's upper edge");
  if (border.edge === "both")
    same(
      value("cloth.width").sub(value("border.second")).sub(hem),
      inches(border.fromEdge).add(inches(border.depth)),
      "the other border lies as far inside its own edge",
    );
  if (!has("border.flounces")) return;
  const strips = plan.layout.pieces.filter(({ name }) => name.startsWith("flounce"));
  for (const piece of strips) {
    const left = inches(piece.x);
    const right = value("cloth.width").sub(left).sub(inches(piece.width));
    law(
      [left, right].some((off) => off.equals(value("border.flounces"))),
      `${piece.name} lies at a border`,
    );
  }
}

/** Shaded from selvedge to selvedge every breadth is light at one edge and dark at the other, and none is turned. */
function shadeLaws({ plan, value, has, law, same }: Laws): void {
  const { shaded } = plan.recipe.cloth;
  law(has("shade.joins") === (shaded !== undefined), "joins of a shading only where there is one");
  if (!shaded || runsAlong(plan)) return;
  same(
    value("shade.joins"),
    F(shaded === "across" ? plan.breadths.length : 0),
    "seams that join light to dark",
  );
}
