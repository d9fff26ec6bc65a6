/** The maker's own rates of work, and prices. */
import { block, optional } from "../blocks.ts";
import { pattern } from "../fields.ts";
import { rate } from "../measures.ts";
import { hourly, money, price } from "../money.ts";

const own = (about: string, example: string) =>
  optional(rate({ about, example, above: "0 per min", most: "1000 per min" }));

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
          price({
            about: "cloth by the yard or metre",
            example: "9.50 per yd",
          }),
        ),
        lining: optional(price({ about: "the lining by the yard or metre", example: "4.20 per yd" })),
        interlining: optional(price({ about: "the interlining by the yard or metre", example: "5 per yd" })),
        notions: optional(
          money({
            about: "thread, hooks, tape, braid, a facing of other cloth, a stay and the rest, together",
            example: "12.00",
          }),
        ),
        hour: optional(hourly({ about: "an hour of work", example: "22.00" })),
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
