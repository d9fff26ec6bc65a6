/** What a page loads when something is to be worked out again. Gives itself to the page's script as `plainworkCore`. */

import { html } from "../booklet/nodes.ts";
import type { Message } from "../recipe/message.ts";
import type { Changes } from "../recipe/written.ts";
import type { Units } from "./kept.ts";
import { Live, type Outcome, type PageData } from "./live/live.ts";
import { patch } from "./live/patch.ts";
import { type Working, workingOf } from "./live/working.ts";

export interface Shown {
  readonly ok: boolean;
  readonly messages: readonly Message[];
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
  private shown: Outcome & { plan: object };
  private nodes: ReturnType<typeof wrapped>;

  constructor(data: PageData, document: Document) {
    this.live = new Live(data, picturesIn(document));
    this.main = document.querySelector("main") as Element;
    this.contents = document.querySelector("nav.contents") as Element;
    const published = this.live.make({}, "");
    if (!published.plan) throw new Error("the page's own recipe cannot be read");
    this.shown = published;
    this.nodes = wrapped(published);
  }

  show(changes: Changes, units: Units): Shown {
    const outcome = this.live.make(changes, units);
    if (!outcome.plan) return { ok: false, messages: outcome.messages };
    const nodes = wrapped(outcome);
    patch(this.main, this.nodes.main, nodes.main);
    patch(this.contents, this.nodes.contents, nodes.contents);
    this.shown = outcome;
    this.nodes = nodes;
    return { ok: true, messages: outcome.messages };
  }

  working(name: string): Working | undefined {
    return workingOf(this.shown.plan, name);
  }
}

globalThis.plainworkCore = { open: (data, document) => new Page(data, document) };
