/** Declarators for what things cost: exact decimal sums, without sign, two places at most. */
import { dim, fraction, MONEY, type Quantity, quantity } from "../quantity/quantity.ts";
import { UNITS, type Unit } from "../quantity/units.ts";
import { bad, type Field, field, type Options } from "./fields.ts";
import { quoted } from "./problem.ts";

const SUM = "\\d{1,9}(?:\\.\\d{1,2})?";
const MONEY_TEXT = new RegExp(`^(${SUM})$`);
const PRICE_TEXT = new RegExp(`^(${SUM}) ?(?:per |/ ?)(yd|yard|m|metre)$`);

const PER_LENGTH = dim(-1, 0, 0, 1);
const PER_TIME = dim(0, 0, -1, 1);
const HOUR = 3600n;

function sum(
  kind: "money" | "price",
  shape: RegExp,
  wanted: string,
  make: (amount: string, unit: string) => Quantity,
  options: Options,
): Field<Quantity> {
  return field<Quantity>({ kind, ...options }, (written) => {
    const found = shape.exec(written.trim());
    if (found) return { value: make(found[1] as string, found[2] ?? "") };
    return bad("not-money", `${quoted(written)} cannot be read as ${wanted}`, {
      hint: `write it like ${options.example}`,
    });
  });
}

/** A sum of money, `12.00`. */
export const money = (options: Options): Field<Quantity> =>
  sum("money", MONEY_TEXT, "a sum of money", (amount) => quantity(amount, MONEY), options);

/** A sum of money for an hour, `22.00`. */
export const hourly = (options: Options): Field<Quantity> =>
  sum(
    "money",
    MONEY_TEXT,
    "a sum of money",
    (amount) => quantity(fraction(amount).div(fraction(HOUR)), PER_TIME),
    options,
  );

/** A price for a length, `9.50 per yd` or `9.50 per m`. */
export const price = (options: Options): Field<Quantity> =>
  sum(
    "price",
    PRICE_TEXT,
    "a price per yard or per metre",
    (amount, unit) => quantity(fraction(amount).div((UNITS.get(unit) as Unit).size), PER_LENGTH),
    options,
  );
