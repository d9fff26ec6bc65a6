/** Turning the top down along the balance line: one half, turned and pinned as far as its middle, still flat beyond it. */
import type { Plan } from "../../solve/plan.ts";
import { Drawing } from "../drawing.ts";
import { type Half, halfOf } from "../half.ts";
import { pen, printer } from "../measure.ts";
import type { Point } from "../svg.ts";
import { goesOn, level, p, pins, point, say, upright, way } from "./parts.ts";
import type { Step } from "./step.ts";

const [LEFT, RIGHT] = [30, 334] as const;
const TOP = 60;
/** The deepest turn-down on the page. */
const DEEPEST = 50;
/** Tacking below the fold, on the page. */
const TACKED = 12;
const STITCH = 9;

/** Both halves where they differ are turned alike: the left one is drawn, or the right where the opening is there. */
const shownHalf = (plan: Plan): Half =>
  halfOf(plan, plan.opening.share.value.compare("1/2") > 0 ? "right" : "left");

/** How far the turning has come: the station nearest the middle of the page. */
const dividing = ({ stations, round }: Half): Half["stations"][number] =>
  stations.reduce((best, at) =>
    Math.abs(at.fromFront - round / 2) < Math.abs(best.fromFront - round / 2) ? at : best,
  );

const tackDepth = ({ recipe }: Plan): string => (recipe.show === "cm" ? "1 cm" : "3/8 in");

function draw(plan: Plan): Drawing {
  const drawing = new Drawing("step-turn");
  const half = shownHalf(plan);
  const left = half.side === "left";
  const { tape } = printer(plan);
  const across = (at: number): number => {
    const share = (at / half.round) * (RIGHT - LEFT);
    return left ? LEFT + share : RIGHT - share;
  };
  const scale = DEEPEST / Math.max(...half.curve.map(({ turnDown }) => turnDown));
  const line = half.curve.map(({ fromFront, turnDown }) => p(across(fromFront), TOP + turnDown * scale));
  const end = across(dividing(half).fromFront);
  const ahead = (x: number): number => (left ? x - end : end - x);
  const turned = line.filter(({ x }) => ahead(x) < 0.1);
  const flat = line.filter(({ x }) => ahead(x) > -0.1);
  drawing.note("The outside towards you, the cut top upwards:");
  drawing.lines("fold", [turned]);
  const hidden = turned.map(({ x, y }) => p(x, y + (y - TOP)));
  drawing.line("hidden", hidden);
  drawing.lines("over", tacks(turned), { soft: true });
  const far = left ? RIGHT : LEFT;
  drawing.lines("cut", [level(TOP, end, far), upright(end, TOP, (turned.at(-1) as Point).y)]);
  drawing.lines("station", [flat], { soft: true });
  const foot = TOP + 2 * DEEPEST + 8;
  goesOn(drawing, [[p(LEFT, foot), p(RIGHT, foot)]]);
  const places = half.stations.filter(({ fromFront }) => ahead(across(fromFront)) < 0.1);
  const heads = between(
    places.map(({ fromFront, turnDown }) => p(across(fromFront), TOP + pen(turnDown) * scale)),
    turned,
  );
  pins(
    drawing,
    heads.map(({ x, y }) => p(x, y - 8)),
    20,
  );
  const inwards = left ? 1 : -1;
  const bend = end + 24 * inwards;
  way(drawing, p(bend, TOP - 14), p(bend, TOP + 16));
  say(drawing, "turn to the inside", p(bend, TOP - 12), { sides: [left ? "right" : "left"], gap: 8 });
  const ending = hidden.at(-1) as Point;
  point(drawing, "cut edge, behind", ending, p(ending.x + 16 * inwards, foot - 18), {
    sides: [left ? "right" : "left"],
  });
  for (const station of half.stations.filter((_, i) => i % 2 === 0)) {
    const x = across(station.fromFront);
    const y = TOP + pen(station.turnDown) * scale;
    const on = ahead(x) < 0.1;
    const stand = on ? p(x - (x === end ? 30 * inwards : 0), y - 11) : p(x, y);
    say(drawing, tape(station.turnDownMark), stand, { sides: [on ? "above" : "below"], gap: 3, width: 80 });
    say(drawing, station.station.replace(/^(left|right) /, ""), p(x, foot), {
      sides: ["below"],
      gap: 3,
      width: 80,
    });
  }
  drawing.settle();
  drawing.note(
    `A pin at every mark and half-way between; tacked ${tackDepth(plan)} below the fold. Depths drawn too large.`,
  );
  return drawing;
}

/** Stitches of the tacking, along the fold. */
function tacks(fold: readonly Point[]): Point[][] {
  const dense = fold.flatMap((at, i) => {
    const next = fold[i + 1];
    const parts = next ? Math.max(1, Math.round(Math.abs(next.x - at.x) / STITCH)) : 0;
    return next
      ? Array.from({ length: parts }, (_, k) =>
          p(at.x + ((next.x - at.x) * k) / parts, at.y + ((next.y - at.y) * k) / parts + TACKED),
        )
      : [p(at.x, at.y + TACKED)];
  });
  return dense.flatMap((at, i) => {
    const next = dense[i + 1];
    return i % 2 === 0 && next ? [[at, next]] : [];
  });
}

/** The marks and the places half-way between them, on the line. */
function between(marks: readonly Point[], fold: readonly Point[]): Point[] {
  const on = (x: number): Point =>
    fold.reduce((best, at) => (Math.abs(at.x - x) < Math.abs(best.x - x) ? at : best));
  return marks.flatMap((mark, i) => {
    const next = marks[i + 1];
    return next ? [mark, on((mark.x + next.x) / 2)] : [mark];
  });
}

export const stepTurn: Step = {
  title: "Step: the top turned down along the line",
  draw,
  describe(plan) {
    const { tape } = printer(plan);
    const half = shownHalf(plan);
    const depths = half.stations
      .filter((_, i) => i % 2 === 0)
      .map(
        ({ station, turnDownMark }) =>
          `${tape(turnDownMark)} at ${station.startsWith("centre") ? "" : "the "}${station}`,
      );
    return `The wearer's ${half.side} half from the outside. From centre front to the ${dividing(half).station} the top is folded to the inside along the line, pinned at the marks and half-way between, tacked ${tackDepth(plan)} below the fold; the cut edge, hidden behind, follows it. The rest still lies flat. Turned down: ${depths.join(", ")}.`;
  },
};
