/** Holds a template's tree against the names there are: every mistyped name is found, also where it is never reached. */

import { nearest } from "../../quantity/nearest.ts";
import type { Code } from "../../recipe/messages/code.ts";
import { quoted } from "../../recipe/problem.ts";
import { HELPERS } from "./helpers.ts";
import { isList, isNames, type Named, type Names, named, pathsOf } from "./shape.ts";
import { type At, type Expression, type Part, type Template, TemplateError } from "./tree.ts";
import { WORD_LIST } from "./word-list.ts";

export interface Known {
  /** What stands at the top. */
  readonly names: Names;
  /** Figures that some garment has. */
  readonly figures: readonly string[];
  /** Words that the project tells besides the program's own. */
  readonly words?: readonly string[];
  /** Chapters that can be put in; without them none can. */
  readonly chapters?: readonly string[];
  /** The template's own text, so that a place can be the name's and not the whole tag's. */
  readonly text?: string;
}

/** Everything that is wrong with a template whatever the garment, in the order of its text. */
export function checkTemplate(template: Template, known: Known): TemplateError[] {
  const check = new Check(known);
  check.parts(template, [known.names]);
  return check.faults;
}

/** The nearest name is looked for this often; a text with more mistakes is told only that they are. */
const MOST_SOUGHT = 100;

/** Names inside names: the whole first, then the item of each list that is gone through. */
type Scopes = readonly Named[];

class Check {
  readonly faults: TemplateError[] = [];
  private sought = 0;
  private readonly known: Known;
  private readonly lines: readonly string[] | undefined;

  constructor(known: Known) {
    this.known = known;
    this.lines = known.text?.split("\n");
  }

  parts(template: Template, scopes: Scopes): void {
    for (const part of template) if (typeof part !== "string") this.part(part, scopes);
  }

  private part(part: Exclude<Part, string>, scopes: Scopes): void {
    if ("print" in part) this.print(part.print, scopes, part.at);
    else if ("chapter" in part) this.chapter(part.chapter, part.at);
    else if ("if" in part) {
      this.expression(part.if, scopes, part.at);
      this.parts(part.do, scopes);
      this.parts(part.else, scopes);
    } else {
      const list = this.expression(part.each, scopes, part.at);
      if (list !== undefined && !isList(list)) {
        this.say(
          part.at,
          part.each,
          "not-a-list",
          `${shownOf(part.each)} is not a list`,
          "{{#each}} goes through a list",
        );
      } else if (list) this.parts(part.do, [...scopes, list.item]);
      this.parts(part.else, scopes);
    }
  }

  private print(expression: Expression, scopes: Scopes, at: At | undefined): void {
    const what = this.expression(expression, scopes, at);
    if (what === undefined || what === "value" || what === "words") return;
    const kind = what === "flag" ? "yes or no" : isList(what) ? "a list" : "a block of names";
    const hint =
      what === "flag"
        ? `ask for it: {{#if ${nameOf(expression)}}} … {{/if}}`
        : isList(what)
          ? `go through it: {{#each ${nameOf(expression)}}} … {{/each}}`
          : `write the rest of the name, as ${example(nameOf(expression), what)}`;
    this.say(
      at,
      expression,
      "not-printable",
      `${shownOf(expression)} is ${kind}, not a value to print`,
      hint,
    );
  }

  private chapter(name: string, at: At | undefined): void {
    const { chapters } = this.known;
    if (!chapters) {
      this.say(
        at,
        name,
        "chapter-in-chapter",
        "a chapter cannot be put into another",
        "name it in recipe.md",
      );
    } else if (!chapters.includes(name)) {
      const near = nearest(name, chapters);
      const hint = near ? `did you mean ${near}?` : `there are ${chapters.join(", ")}`;
      this.say(at, name, "unknown-chapter", `there is no chapter ${quoted(name)}`, hint);
    }
  }

  /** What an expression comes to; undefined, with a fault said, where that cannot be told. */
  private expression(expression: Expression, scopes: Scopes, at: At | undefined): Named | undefined {
    if (typeof expression === "string") return this.name(expression, scopes, at);
    if ("says" in expression) return "words";
    const { helper, with: given } = expression;
    const own = Object.hasOwn(HELPERS, helper) ? HELPERS[helper] : undefined;
    if (!own) {
      const near = nearest(helper, Object.keys(HELPERS));
      const hint = near ? `did you mean ${near}?` : `there are ${Object.keys(HELPERS).join(", ")}`;
      this.say(expression.at ?? at, helper, "unknown-helper", `there is no helper ${quoted(helper)}`, hint);
      return undefined;
    }
    const spared = own.takes.length - given.length;
    if (spared < 0 || spared > (own.spare ?? 0)) {
      this.say(
        expression.at ?? at,
        helper,
        "helper",
        `${helper} is given ${things(given.length)}`,
        `write it like ${own.example}`,
      );
      return undefined;
    }
    given.forEach((part, i) => {
      const takes = own.takes[i + spared];
      if (takes === "figure") this.figure(part, expression.at ?? at);
      else if (takes === "word") this.word(part, own.example, expression.at ?? at);
      else this.argument(part, takes === "value", own.example, scopes, expression.at ?? at);
    });
    return own.gives;
  }

  private argument(
    part: Expression,
    value: boolean,
    example: string,
    scopes: Scopes,
    at: At | undefined,
  ): void {
    const what = this.expression(part, scopes, at);
    if (value && what !== undefined && what !== "value") {
      this.say(at, part, "helper", `${shownOf(part)} is not a value`, `write it like ${example}`);
    }
  }

  private figure(part: Expression, at: At | undefined): void {
    const { figures } = this.known;
    if (typeof part !== "object" || !("says" in part)) {
      this.say(at, part, "helper", "a figure is named in quotes", `write {{figure "${figures[0] ?? ""}"}}`);
    } else if (!figures.includes(part.says)) {
      const near = nearest(part.says, figures);
      const hint = near ? `did you mean ${near}?` : `there are ${figures.join(", ")}`;
      this.say(at, part.says, "unknown-figure", `there is no figure ${quoted(part.says)}`, hint);
    }
  }

  private word(part: Expression, example: string, at: At | undefined): void {
    const words = [...WORD_LIST, ...(this.known.words ?? [])];
    if (typeof part !== "object" || !("says" in part)) {
      this.say(at, part, "helper", "a word is named in quotes", `write it like ${example}`);
    } else if (!words.includes(part.says.toLowerCase())) {
      const near = nearest(part.says, words);
      const hint = near ? `did you mean ${near}?` : "write it plainly, or tell it in templates/words.md";
      this.say(at, part.says, "unknown-word", `the glossary does not tell ${quoted(part.says)}`, hint);
    }
  }

  private name(path: string, scopes: Scopes, at: At | undefined): Named | undefined {
    const up = /^(?:\.\.\/)*/.exec(path)?.[0].length ?? 0;
    const rest = path.slice(up).replace(/^(?:this\.|\.\/)/, "");
    if (rest === "@first" || rest === "@last" || rest === "@index") {
      if (scopes.length > 1) return rest === "@index" ? "words" : "flag";
      this.say(at, path, "unknown-name", `${rest} is known only inside {{#each}}`, "take it out");
      return undefined;
    }
    const whole = rest === "@root" || rest.startsWith("@root.");
    const from = whole ? scopes[0] : scopes[scopes.length - 1 - up / 3];
    if (from === undefined) {
      this.say(
        at,
        path,
        "unknown-name",
        `../ in ${quoted(path)} leads out of the whole`,
        "take one ../ away",
      );
      return undefined;
    }
    const inside = whole ? rest.slice("@root.".length) : rest;
    if (inside === "this" || inside === "." || inside === "") return from;
    const found = isNames(from) ? named(from, inside) : undefined;
    if (found === undefined) this.unknown(path, inside, from, scopes, at);
    return found;
  }

  private unknown(path: string, rest: string, from: Named, scopes: Scopes, at: At | undefined): void {
    const here = isNames(from) ? pathsOf(from) : [];
    const [top] = scopes;
    const outside = from !== top && top !== undefined && isNames(top) && named(top, rest) !== undefined;
    this.sought += 1;
    const near = this.sought > MOST_SOUGHT ? undefined : nearest(rest, here);
    const helper = Object.hasOwn(HELPERS, path) ? HELPERS[path] : undefined;
    const flag = isNames(from) && named(from, `is.${rest}`) === "flag" ? `is.${rest}` : undefined;
    const hint = outside
      ? `inside {{#each}} names are those of the item: write ${"../".repeat(scopes.length - 1)}${rest}`
      : helper
        ? `write it like ${helper.example}`
        : flag || near
          ? `did you mean ${path.slice(0, path.length - rest.length)}${flag ?? near}?`
          : from === top
            ? "the workings chapter of a built booklet lists this garment's names, templates/README.md says the rest"
            : `an item has ${here.join(", ")}`;
    this.say(at, path, "unknown-name", `there is no value or list named ${quoted(path)}`, hint);
  }

  private say(at: At | undefined, about: Expression | string, code: Code, text: string, hint: string): void {
    this.faults.push(new TemplateError(text, { at: at && this.narrowed(at, nameOf(about)), code, hint }));
  }

  /** The name's own place inside its tag, where it stands on the tag's first line. */
  private narrowed([line, column, length]: At, name: string): At {
    const tag = this.lines?.[line - 1]?.slice(column - 1, column - 1 + length) ?? "";
    const word = new RegExp(`(?<![\\w.])${name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?![\\w])`).exec(tag);
    return word && name !== "" ? [line, column + word.index, name.length] : [line, column, length];
  }
}

const nameOf = (expression: Expression | string): string =>
  typeof expression === "string" ? expression : "says" in expression ? expression.says : expression.helper;

const shownOf = (expression: Expression): string => quoted(nameOf(expression));

const example = (name: string, names: Names): string => `{{${name}.${pathsOf(names)[0] ?? ""}}}`;

const things = (n: number): string => (n === 0 ? "nothing" : n === 1 ? "one thing" : `${n} things`);
