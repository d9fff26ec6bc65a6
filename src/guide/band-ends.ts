/** Templates for the two ends of a band: where it is cut, turned, folded, lapped and hooked. */
import type { Element } from "hast";
import { el, rectangle, through, written } from "../figure/svg.ts";
import { torn } from "../figure/torn.ts";
import { printOnTape, printPart } from "../quantity/print.ts";
import {
  add,
  compare,
  inches,
  millimetres,
  mul,
  plain,
  type Quantity,
  sub,
  toCount,
} from "../quantity/quantity.ts";
import type { Plan } from "../solve/plan.ts";
import type { Cut } from "./guide.ts";
import { dots, level, lines, mm, paragraph, SHEET, TEXT, upright, words } from "./paper.ts";
import { HEAD } from "./sheet.ts";

/** Band beyond the last thing that an end shows. */
const BEYOND = 42;
/** Between two ends side by side. */
const COLUMN_GAP = 6;

/** How far a hook stands back from the end, as the chapters of the closing say. */
const back = ({ recipe }: Plan): Quantity => (recipe.show === "cm" ? millimetres(3n) : inches("1/8"));

/** One end: lines across it, counted from the cut edge, and hooks or eyes on one of its faces. */
interface End {
  readonly title: string;
  readonly use: string;
  readonly across: readonly {
    readonly at: Quantity;
    readonly text: string;
    readonly turn?: boolean;
    readonly eyes?: boolean;
  }[];
  readonly hooks: readonly {
    readonly at: Quantity;
    readonly what: string;
    readonly face: "outer" | "inner" | "either";
  }[];
}

/** The lengths of the band that the drawing needs. */
function measures({ recipe }: Plan) {
  const { depth, turning, from } = recipe.attach.band;
  const folded = from === "one-piece";
  const whole = add(mul(depth, plain(folded ? 2n : 1n)), mul(turning, plain(2n)));
  return { depth, turning, folded, whole };
}

/** Both ends of a waistband or of a part band. None on a bodice edge, or where the page cannot hold the band's depth. */
export function bandEnds(plan: Plan): Cut[] {
  const { recipe } = plan;
  if (recipe.attach.to === "bodice-edge") return [];
  const { whole } = measures(plan);
  if (mm(whole) > SHEET.height - HEAD - 30) return [];
  const ends = recipe.attach.to === "waistband" ? waistbandEnds(plan) : partBandEnds(plan);
  const held = ends.filter((end) => widthOf(end) <= SHEET.width);
  const beside = held.every((end) => widthOf(end) <= (SHEET.width - COLUMN_GAP) / 2);
  return beside ? [endsCut(held, plan)] : held.map((end) => endsCut([end], plan));
}

const widthOf = ({ across, hooks }: End): number =>
  Math.max(...[...across, ...hooks].map(({ at }) => mm(at))) + BEYOND;

function waistbandEnds(plan: Plan): End[] {
  const { lap } = plan.recipe.attach.band;
  const { turning } = measures(plan);
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const closing = add(turning, lap as Quantity);
  const eyes = sub(closing, back(plan));
  const sets = [
    { at: eyes, waist: plan.values.get("waist.seam")?.quantity as Quantity },
    ...plan.hookSets.map(({ waist, away, on }) => ({
      at: on === "lap" ? sub(eyes, away) : add(eyes, away),
      waist,
    })),
  ].filter(({ at }) => mm(at) + BEYOND <= SHEET.width);
  const named =
    plan.hookSets.length === 0
      ? []
      : sets.map(({ at, waist }) => ({
          at,
          text: `eyes to close to ${printPart(waist, showing)}`,
          eyes: true,
        }));
  const turned = { at: turning, text: `finished end: turn in ${printOnTape(turning, showing)}`, turn: true };
  return [
    {
      title: "upper end",
      use: `the end that laps over, at the opening; its hooks ${printOnTape(back(plan), showing)} back from the finished end, through the inner layer only`,
      across: [turned],
      hooks: [{ at: add(turning, back(plan)), what: "hook", face: "inner" }],
    },
    {
      title: "under end",
      use: `the lap, ${printOnTape(lap as Quantity, showing)}, passes under; no ${plan.recipe.garment} is sewn to it`,
      across: [turned, { at: closing, text: "closing mark" }, ...named].sort((a, b) => compare(a.at, b.at)),
      hooks: sets
        .filter(({ at }) => compare(at, turning) >= 0)
        .map(({ at }) => ({ at, what: "eye", face: "outer" })),
    },
  ];
}

function partBandEnds(plan: Plan): End[] {
  const { lap } = plan.recipe.attach.band;
  const { turning } = measures(plan);
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const closing = add(turning, lap as Quantity);
  return [
    {
      title: "end at centre front",
      use: "stays raw and goes between the bodice and its lining",
      across: [{ at: turning, text: "centre front mark", turn: false }],
      hooks: [],
    },
    {
      title: "end for the hooks",
      use: `the lap, ${printOnTape(lap as Quantity, showing)}, passes on under the bodice; no ${plan.recipe.garment} is sewn to it; hooks ${printOnTape(back(plan), showing)} back from the finished end, on the outer face`,
      across: [
        { at: turning, text: `finished end: turn in ${printOnTape(turning, showing)}`, turn: true },
        { at: closing, text: "closing mark" },
      ],
      hooks: [{ at: add(turning, back(plan)), what: "hook", face: "outer" }],
    },
  ];
}

/** One end with its words over it, in a column of this width. */
function endBlock(end: End, plan: Plan, width: number) {
  const { whole, depth, turning, folded } = measures(plan);
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const name = bandName(plan);
  const faces = folded
    ? "Lay it on the wrong side of the cut band; turn it over for a band that closes the other way."
    : "For both strips, laid on the wrong side; turn it over for the other strip.";
  const lead = paragraph(`${name}, ${end.title}: ${end.use}. ${faces}`, width);
  return {
    lead: lead.height,
    height: mm(whole) + 2 + 3.2 * end.across.length + 3,
    words: `${name}, ${end.title}, cut ${printPart(whole, showing)} deep for a finished ${printOnTape(depth, showing)}; turning ${printOnTape(turning, showing)}.`,
    draw: (top: number, under: number): Element[] => [
      ...lead.draw(0, top),
      ...drawEnd(end, plan, top + under + 2),
    ],
  };
}

const bandName = ({ recipe }: Plan): string => (recipe.attach.to === "part-band" ? "Part band" : "Band");

/** Ends side by side, their words in columns; or one alone across the page. */
function endsCut(ends: readonly End[], plan: Plan): Cut {
  const width = (SHEET.width - COLUMN_GAP * (ends.length - 1)) / ends.length;
  const blocks = ends.map((end) => endBlock(end, plan, width));
  const lead = Math.max(...blocks.map((block) => block.lead));
  return {
    group: `ends of the ${bandName(plan).toLowerCase()}`,
    height: lead + 2 + Math.max(...blocks.map((block) => block.height)),
    words: blocks.map((block) => block.words).join(" "),
    draw: (top) =>
      blocks.map((block, i) =>
        el(
          "g",
          i === 0 ? {} : { transform: `translate(${written(i * (width + COLUMN_GAP))} 0)` },
          block.draw(top, lead),
        ),
      ),
  };
}

/** The cut end itself: edges, turnings, fold, marks, hooks. Names stand where the band is plain. */
function drawEnd(end: End, plan: Plan, top: number): Element[] {
  const { whole, depth, turning, folded } = measures(plan);
  const width = widthOf(end);
  const height = mm(whole);
  const foot = top + height;
  const edge = mm(turning);
  const fold = top + edge + mm(depth);
  const plainFrom = width - BEYOND + 4;
  const ends = end.across.map(({ at, text, turn, eyes }) => ({ x: mm(at), text, turn, eyes }));
  return [
    lines(`${level(top, width, 0)}V${written(foot)}H${written(width)}`, { width: "cut" }),
    lines(through(torn({ x: width, y: top }, { x: width, y: foot })), { width: "fine" }),
    lines([level(top + edge, 0, width - 2.5), level(foot - edge, 0, width - 2.5)].join(""), {
      dash: "3 1.2",
    }),
    ...(folded ? [lines(level(fold, 0, width - 2.5), { dash: "6 1.5 1 1.5", width: "cut" })] : []),
    lines(ends.flatMap(({ x, eyes }) => (eyes ? [] : [upright(x, top, foot)])).join(""), {
      dash: "3 1.2",
      width: "cut",
    }),
    ...ends.map(({ x, text }, i) => named(x, foot, text, ends.length - i)),
    ...faceWords(plan, plainFrom, top),
    words(plainFrom, foot - mm(turning) / 2 + 1, end.title, {
      bold: true,
      size: TEXT.small,
    }),
    ...end.hooks.flatMap((hook) => hookPlaces(hook, plan, top, !end.across.some(({ eyes }) => eyes))),
  ].flat();
}

/** The name of an upright line, below the band at the end of it; lines further left reach lower. */
function named(x: number, foot: number, text: string, step: number): Element[] {
  const y = foot + 3.2 * step;
  return [lines(upright(x, foot, y)), words(x + 0.8, y, text, { size: TEXT.small })];
}

/** What each part of the band's depth is. */
function faceWords(plan: Plan, x: number, top: number): Element[] {
  const { depth, turning, folded } = measures(plan);
  const showing = { show: plan.recipe.show, tape: plan.recipe.tape };
  const half = mm(depth) / 2;
  const inner = top + mm(turning) + half;
  const finished = `${printOnTape(depth, showing)} finished`;
  if (!folded)
    return [
      words(x, inner + 1, finished),
      words(x, top + mm(turning) - 0.9, "seam, top of the band", { size: TEXT.small }),
    ];
  return [
    words(x, inner - 0.6, "inside half"),
    words(x, inner + 3, finished, { size: TEXT.small }),
    words(x, top + mm(turning) + mm(depth) - 0.8, "fold, top of the band", { size: TEXT.small }),
    words(x, inner + mm(depth) - 0.6, "outside half"),
    words(x, inner + mm(depth) + 3, finished, { size: TEXT.small }),
    words(x, top + mm(turning) - 0.9, `turning ${printOnTape(turning, showing)}`, { size: TEXT.small }),
  ];
}

/** The hooks of one end over the depth of their face: half a space from its long edges, a space from each other. */
export function hookDepths({ values }: Plan): Quantity[] {
  const [first, count] = ["hooks.bandFirst", "hooks.band"].map((name) => values.get(name)?.quantity);
  if (!first || !count) return [];
  return Array.from({ length: toCount(count) }, (_, i) => mul(first, plain(2 * i + 1)));
}

function hookPlaces(
  { at, what, face }: End["hooks"][number],
  plan: Plan,
  top: number,
  worded: boolean,
): Element[] {
  const { depth, turning, folded } = measures(plan);
  const faceTop = add(turning, folded && face === "outer" ? depth : sub(depth, depth));
  const places = hookDepths(plan).map((down) => ({ x: mm(at), y: top + mm(add(faceTop, down)) }));
  const label = places[0];
  return [
    dots(places.map(({ x, y }) => `M${written(x)} ${written(y)}h0`).join(""), 1.4),
    ...places.map(({ x, y }) => lines(rectangle(x - 1.4, y - 1.4, 2.8, 2.8))),
    ...(label && worded
      ? [
          words(label.x + (what === "eye" ? -2.2 : 2.2), label.y + 1, `${what}s`, {
            size: TEXT.small,
            anchor: what === "eye" ? "end" : "start",
          }),
        ]
      : []),
  ];
}
