/** How the fullness is set to the waist: method or zones, rows, thread, the trial. */
import { block, list, optional } from "../blocks.ts";
import { byDefault, choice, flag } from "../fields.ts";
import { MOST_ZONES } from "../limits.ts";
import { count, length, number, share } from "../measures.ts";
import { OF_WAIST, STAY, TRIAL, ZONE } from "./set.ts";

const ROW = {
  example: "1/4 in",
  byDefault: byDefault("1/4 in", "6 mm"),
  above: "0 in",
  most: "4 in",
} as const;

export const FULLNESS = block(
  "how the fullness is set to the waist",
  {
    method: optional(
      choice(["gauged", "pleated", "pleated-gauged-back", "flat-front-gauged"], {
        about: "one way for the whole waist, in place of zones",
        example: "gauged",
        byDefault: byDefault("gauged"),
        unless: "fullness.zones",
      }),
    ),
    zones: optional(
      list("the zones of one half, centre front to centre back, mirrored on the other half", ZONE, {
        most: MOST_ZONES,
      }),
    ),
    "gauged-back": length({
      about: "with pleated-gauged-back: waist length gauged, both halves together",
      example: "6 in",
      byDefault: byDefault("6 in", "15 cm"),
      when: { path: "fullness.method", is: ["pleated-gauged-back"] },
      ...OF_WAIST,
    }),
    "flat-front": length({
      about: "with flat-front-gauged: waist length left plain, both halves together",
      example: "5 in",
      byDefault: byDefault("5 in", "12 cm"),
      when: { path: "fullness.method", is: ["flat-front-gauged"] },
      ...OF_WAIST,
    }),
    "back-share": optional(
      share({
        about:
          "fullness thrown to the back: the share of the gauged cloth that lies behind the sides; as much as of the gauged waist where it is not given",
        example: "55 %",
        least: "1 %",
        most: "99 %",
      }),
    ),
    rows: count({
      about: "gauging rows",
      example: "2",
      byDefault: byDefault("2"),
      least: "2",
      most: "6",
    }),
    "first-row": length({ about: "first row below the fold", ...ROW }),
    "between-rows": length({ about: "from one row to the next", ...ROW }),
    margin: length({
      about: "least turned cloth under the last row",
      example: "1/4 in",
      byDefault: byDefault("1/4 in", "6 mm"),
      fixed: true,
    }),
    "pleats-per-inch": optional(
      number({ about: "wished pleats in an inch of waist seam", example: "9", above: "0", most: "60" }),
    ),
    "pleats-as-wished": optional(
      flag({
        about:
          "sew just the wished number of pleats, as when an original is followed; else the bites may take up to a tenth fewer, to fall on tape marks",
      }),
    ),
    "finest-bite": length({
      about: "the finest bite that will be sewn",
      example: "1/4 in",
      byDefault: byDefault("1/4 in", "6 mm"),
      above: "0 in",
      most: "4 in",
    }),
    "deepest-pitch": length({
      about: "the most cloth in one pleat",
      example: "2 in",
      byDefault: byDefault("2 in", "50 mm"),
      above: "0 in",
      most: "20 in",
    }),
    "follow-repeat": flag({
      about: "lock the pitch to the checks or stripes",
      byDefault: byDefault("false"),
    }),
    stay: optional(STAY),
    thread: choice(["drawn-along", "full-length"], {
      about: "the thread is drawn along as the row is sewn, or laid full length",
      example: "drawn-along",
      byDefault: byDefault("drawn-along"),
    }),
    "thread-ends": length({
      about: "thread to hold at the ends of one row",
      example: "10 in",
      byDefault: [
        { in: "12 in", cm: "30 cm", when: { path: "fullness.thread", is: ["full-length"] } },
        { in: "10 in", cm: "25 cm" },
      ],
      fixed: true,
    }),
    strands: count({
      about: "1 for a single thread, 2 for a doubled one",
      example: "2",
      byDefault: byDefault("2"),
      least: "1",
      most: "2",
    }),
    "comfortable-bite": length({
      about: "bites up to this are sewn even; above it long and short",
      example: "1/2 in",
      byDefault: byDefault("1/2 in", "12 mm"),
      fixed: true,
    }),
    "short-bite": length({
      about: "the short bite of long and short",
      example: "1/8 in",
      byDefault: byDefault("1/8 in", "3 mm"),
      fixed: true,
    }),
    "closest-easy": length({
      about: "easy spacing of pleats is never closer, without a wish or a trial",
      example: "1/12 in",
      byDefault: byDefault("1/12 in", "2 mm"),
      fixed: true,
    }),
    "wished-face": length({
      about: "width of a pleat as it shows, where a zone does not say",
      example: "3/4 in",
      byDefault: byDefault("3/4 in", "2 cm"),
      when: { path: "fullness.method", is: ["pleated", "pleated-gauged-back", undefined] },
      fixed: true,
    }),
    "least-trial": length({
      about: "least cloth for a trial",
      example: "4 in",
      byDefault: byDefault("4 in", "10 cm"),
      fixed: true,
    }),
    trial: optional(TRIAL),
  },
  { always: true },
);
