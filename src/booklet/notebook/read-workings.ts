/** Workings blocks: one `name = formula` a line, with # comments. Read here; calculated in work.ts once the plan is there. */
import { type Formula, FormulaError, readFormula } from "../../quantity/formula.ts";
import { nearest } from "../../quantity/nearest.ts";
import { MOST_WORKINGS } from "../../recipe/limits.ts";
import type { Message, Place } from "../../recipe/message.ts";
import { clipped, messageOf, type Problem, quoted } from "../../recipe/problem.ts";
import { isNames, type Names, named, pathsOf } from "../template/shape.ts";
import { inOrderOfNeed } from "./depend.ts";
import { formulaProblem } from "./formula-problem.ts";
import type { WorkingsLine } from "./notebook.ts";
import { nameProblem } from "./own-names.ts";
import type { Fence, Line } from "./scan.ts";

export interface ReadWorkings {
  readonly blocks: readonly (readonly WorkingsLine[])[];
  readonly inOrder: readonly WorkingsLine[];
  readonly messages: readonly Message[];
  /** Names that are given, right or wrong: a text that uses one is not told that it is unknown. */
  readonly given: ReadonlyMap<string, "value" | "flag">;
}

type Span = (line: Line, column: number, length: number) => Place;

interface Half {
  readonly line: WorkingsLine;
  readonly formula: Formula;
}

/**
 * Reads workings blocks.
 *
 * @param names the program's own names
 * @param span a place in the file
 */
export function readWorkings(fences: readonly Fence[], names: Names, span: Span): ReadWorkings {
  const reader = new Reader(names, span);
  const blocks = fences.map((fence) => fence.lines.flatMap((line) => reader.line(line) ?? []));
  return reader.finish(blocks);
}

const LINE = /^(\s*)([^\s=<>!]+)(\s*)=(?!=)(\s*)(.*)$/;

class Reader {
  private readonly names: Names;
  private readonly span: Span;
  private readonly messages: Message[] = [];
  private readonly given = new Map<string, "value" | "flag">();
  private readonly firstAt = new Map<string, Place>();
  /** Lines with names that cannot be used: they are not calculated. */
  private readonly unsound = new Set<string>();
  private count = 0;

  constructor(names: Names, span: Span) {
    this.names = names;
    this.span = span;
  }

  line(line: Line): Half | undefined {
    const hash = line.text.indexOf("#");
    const text = hash < 0 ? line.text : line.text.slice(0, hash);
    const about = hash < 0 ? "" : line.text.slice(hash + 1).trim();
    if (text.trim() === "") return undefined;
    this.count += 1;
    if (this.count > MOST_WORKINGS) {
      if (this.count === MOST_WORKINGS + 1) {
        this.say(this.whole(line), {
          code: "too-many",
          text: `there are more than ${MOST_WORKINGS} lines of workings`,
          hint: "take some out",
        });
      }
      return undefined;
    }
    const found = LINE.exec(text);
    if (!found) {
      this.say(this.whole(line), {
        code: "workings-line",
        text: `${quoted(text.trim())} is no line of workings`,
        expected: "name = formula",
        hint: "write it like ribbon = skirt.round * 11/10 + 3 in; a remark begins with #",
      });
      return undefined;
    }
    const [, lead = "", name = "", gap = "", space = "", rest = ""] = found;
    const place = this.span(line, lead.length + 1, name.length);
    const column = lead.length + name.length + gap.length + 1 + space.length;
    const wrong = nameProblem(name, this.names) ?? this.repeated(name, place);
    if (wrong) this.say(place, wrong);
    const formulaText = rest.trimEnd();
    const formula = this.formula(formulaText, line, column);
    if (!this.given.has(name)) this.given.set(name, formula?.isComparison ? "flag" : "value");
    if (wrong || !formula) return undefined;
    return {
      formula,
      line: {
        name,
        formula: formulaText,
        ...(about === "" ? {} : { about: clipped(about, 120) }),
        from: [],
        isAnswer: formula.isComparison,
        place,
        formulaAt: this.span(line, column + 1, Math.max(1, formulaText.length)),
      },
    };
  }

  /** A name given a second time, or one that stands over or under another. */
  private repeated(name: string, place: Place): Problem | undefined {
    const first = this.firstAt.get(name);
    if (first) {
      return {
        code: "name-twice",
        text: `${quoted(name)} is worked out a second time; it was first on line ${first.line}`,
        hint: "give one of the two another name",
      };
    }
    this.firstAt.set(name, place);
    const other = [...this.firstAt.keys()].find(
      (known) => known.startsWith(`${name}.`) || name.startsWith(`${known}.`),
    );
    return other === undefined
      ? undefined
      : {
          code: "name-taken",
          text: `${quoted(name)} and ${quoted(other)} cannot both be values: one begins the other`,
          hint: "give one of the two another name",
        };
  }

  private formula(text: string, line: Line, column: number): Formula | undefined {
    try {
      return readFormula(text);
    } catch (error) {
      if (!(error instanceof FormulaError)) throw error;
      const at = Math.min(error.at, Math.max(0, text.length - 1));
      const word = /^[\w.]+/.exec(text.slice(at))?.[0].length ?? 1;
      this.say(this.span(line, column + 1 + at, word), formulaProblem(error));
      return undefined;
    }
  }

  finish(blocks: readonly (readonly Half[])[]): ReadWorkings {
    const sound = blocks.map((block) => block.map((half) => this.tied(half)));
    const { order, circles } = inOrderOfNeed(sound.flat());
    const onCircle = new Set(circles.flat());
    for (const circle of circles) {
      const [first] = circle;
      const line = sound.flat().find(({ name }) => name === first);
      if (line) {
        this.say(line.place, {
          code: "circle",
          text: `these are worked out from each other in a circle: ${circle.join(" -> ")}`,
          hint: "one of them must be worked out from something else",
        });
      }
    }
    return {
      blocks: sound,
      inOrder: order.filter(({ name }) => !onCircle.has(name) && !this.unsound.has(name)),
      messages: this.messages,
      given: this.given,
    };
  }

  /** A line with the other lines that it needs; names that nobody knows are told. */
  private tied({ line, formula }: Half): WorkingsLine {
    const from: string[] = [];
    for (const name of formula.names) {
      const own = this.given.get(name);
      const known = own ?? named(this.names, name);
      if (own === "value") from.push(name);
      if (known === "value") continue;
      this.unsound.add(line.name);
      const { formulaAt } = line;
      const at = { ...formulaAt, column: formulaAt.column + formula.placeOf(name), length: name.length };
      if (own === "flag") {
        this.say(at, {
          code: "kind",
          text: `${quoted(name)} is yes or no and cannot be calculated with`,
          hint: `ask for it in the text: {{#if ${name}}} … {{/if}}`,
        });
      } else if (known === undefined) this.say(at, this.unknown(name));
      else {
        const inside = isNames(known) ? ` such as ${name}.${pathsOf(known)[0] ?? ""}` : "";
        this.say(at, {
          code: "unknown-name",
          text: `${quoted(name)} is no value that can be calculated with`,
          expected: `the name of a value${inside}`,
        });
      }
    }
    return { ...line, from };
  }

  private unknown(name: string): Problem {
    const near = nearest(name, [...this.given.keys(), ...valueNames(this.names)]);
    return {
      code: "unknown-name",
      text: `there is no value named ${quoted(name)}`,
      hint: near
        ? `did you mean ${near}?`
        : "the workings chapter of a built booklet lists every value by its name",
    };
  }

  private whole(line: Line): Place {
    const lead = line.text.length - line.text.trimStart().length;
    return this.span(line, lead + 1, Math.max(1, line.text.trim().length));
  }

  private say(place: Place, problem: Problem): void {
    this.messages.push(messageOf(problem, "", place));
  }
}

const valueNames = (names: Names): string[] =>
  pathsOf(names).filter((path) => named(names, path) === "value");
