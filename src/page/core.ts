/** What a page loads when something is to be worked out again. Gives itself to the page's script as `plainworkCore`. */

import { contents } from "../booklet/contents.ts";
import { html } from "../booklet/nodes.ts";
import type { Message } from "../recipe/message.ts";
import { problemAt } from "../recipe/one-field.ts";
import { messageOf } from "../recipe/problem.ts";
import { type Changes, NOWHERE } from "../recipe/written.ts";
import type { Units } from "./kept.ts";
import { Live, type Outcome, type PageData } from "./live/live.ts";
import { patch } from "./live/patch.ts";
import { type Working, workingOf } from "./live/working.ts";

export interface Shown {
  readonly ok: boolean;
  readonly messages: readonly Message[];
  /** Is there no booklet yet, since measures are still wanting? */
  readonly isWaiting?: true;
}

/** What the page's script asks of the core. */
export interface Core {
  /** Takes over a page: what stands in it is what was published. */
  open(data: PageData, document: Document): Opened;
}

export interface Opened {
  /** Works out and shows; with faults nothing in the page changes. */
  show(changes: Changes, units: Units): Shown;
  /** How a value that is shown was worked out. */
  working(name: string): Working | undefined;
}

declare global {
  var plainworkCore: Core | undefined;
  var plainworkChapters: unknown;
}

const wrapped = (outcome: Outcome & { plan: object }) => ({
  main: html("main", {}, outcome.parts.nodes),
  contents: outcome.parts.contents,
});

type Wrapped = Pick<ReturnType<typeof wrapped>, "main" | "contents">;

/** A page without a booklet, as it is built. */
const NOTHING: Wrapped = { main: html("main"), contents: contents([]) };

/** What is wrong with texts by themselves, while the whole cannot be worked out. */
function faultsOf(changes: Changes): Message[] {
  return Object.entries(changes).flatMap(([path, text]) => {
    const problem = text === null ? undefined : problemAt(path, text);
    return problem ? [messageOf(problem, path, NOWHERE)] : [];
  });
}

/** What stands in a page for each photograph that it shows. */
const picturesIn = (document: Document): ReadonlyMap<string, string> =>
  new Map(
    [...document.querySelectorAll<HTMLImageElement>("img[data-photograph]")].map((image) => [
      image.dataset.photograph ?? "",
      image.getAttribute("src") ?? "",
    ]),
  );

class Page implements Opened {
  private readonly live: Live;
  private readonly main: Element;
  private readonly contents: Element;
  /** What stands in the page; nothing while measures are wanting. */
  private shown: (Outcome & { plan: object }) | undefined;
  private nodes: Wrapped;

  constructor(data: PageData, document: Document) {
    this.live = new Live(data, picturesIn(document));
    this.main = document.querySelector("main") as Element;
    this.contents = document.querySelector("nav.contents") as Element;
    if (data.asks) {
      this.nodes = NOTHING;
      return;
    }
    const published = this.live.make({}, "");
    if (!published.plan) throw new Error("the page's own recipe cannot be read");
    this.shown = published;
    this.nodes = wrapped(published);
  }

  show(changes: Changes, units: Units): Shown {
    if (this.live.missing(changes).length > 0) {
      this.put(undefined, NOTHING);
      const messages = faultsOf(changes);
      return { ok: messages.length === 0, messages, isWaiting: true };
    }
    const outcome = this.live.make(changes, units);
    if (!outcome.plan) return { ok: false, messages: outcome.messages };
    this.put(outcome, wrapped(outcome));
    return { ok: true, messages: outcome.messages };
  }

  private put(shown: typeof this.shown, nodes: Wrapped): void {
    patch(this.main, this.nodes.main, nodes.main);
    patch(this.contents, this.nodes.contents, nodes.contents);
    this.shown = shown;
    this.nodes = nodes;
  }

  working(name: string): Working | undefined {
    return this.shown && workingOf(this.shown.plan, name);
  }
}

globalThis.plainworkCore = { open: (data, document) => new Page(data, document) };
