/** The maker's own rates of work, and prices. */
import { block, optional } from "../blocks.ts";
import { pattern } from "../fields.ts";
import { rate } from "../measures.ts";

const own = (about: string, example: string) =>
  optional(rate({ about, example, above: "0 per min", most: "1000 per min" }));

/** A sum of money as exact decimal text: no sign, two places at most. */
const SUM = "\\d{1,9}(?:\\.\\d{1,2})?";
const MONEY = new RegExp(`^${SUM}$`);
const PRICE = new RegExp(`^${SUM} ?(?:per |/ ?)(?:yd|yard|m|metre)$`);

const money = (about: string, example: string) =>
  optional(pattern("money", MONEY, "a sum of money", { about, example }));

export const WORK = block(
  "how fast you work, and what things cost",
  {
    rates: block(
      "your own rates a minute, in place of the usual range",
      {
        running: own("running stitches", "25 per min"),
        marking: own("marks for the needle", "20 per min"),
        gauging: own("bites of gauging", "18 per min"),
        whip: own("whip stitches", "10 per min"),
      },
      { always: true },
    ),
    price: optional(
      block("prices; what is not given is not counted", {
        cloth: optional(
          pattern("price", PRICE, "a price per yard or per metre", {
            about: "cloth by the yard or metre",
            example: "9.50 per yd",
          }),
        ),
        notions: money("thread, hooks, tape and the rest, together", "12.00"),
        hour: money("an hour of work", "22.00"),
        currency: optional(
          pattern("currency", /^[A-Z]{3}$/, "three capital letters for a currency", {
            about: "the currency of all prices",
            example: "GBP",
          }),
        ),
      }),
    ),
  },
  { always: true },
);
