/**
 * The rules of the trade, row by row, in built booklets: each row of trade.json says where a rule shows, in a demo or in
 * a small recipe of its own, and what must be found there. The numbers were worked by hand, as `hand` says. Parts: 3 waist and
 * breadths, 4 lengths, 5 zones, 6 gauging, 7 setting, 8 hem and cloth, 9 cautions.
 */
import { describe, it } from "vitest";
import { hold, type Row } from "./rows.ts";
import rows from "./trade.json" with { type: "json" };

const cases = rows as unknown as readonly Row[];

describe.each([3, 4, 5, 6, 7, 8, 9])("rules of the trade, part %i", (part) => {
  const own = cases.filter(({ section }) => section === part);
  it.each(own.map((row) => [`${row.rule} [${row.demo ?? "a recipe of its own"}]`, row] as const))(
    "%s",
    (_, row) => hold(row),
  );
});
