/** The booklet's side of the page: makes the booklet of the text and shows it in its frame. */
import type { Message } from "../../recipe/message.ts";
import type { Block } from "../../recipe/node.ts";
import type { Plan } from "../../solve/plan.ts";
import { type Booklet, Desk } from "./desk.ts";
import type { Frame, Page } from "./frame/frame.ts";
import { counted } from "./messages.ts";

export class BookletSide {
  readonly desk = new Desk();
  private frame: Frame | undefined;
  private last: Booklet | undefined;
  /** The text that the booklet was made of, while it is the last one that was tried. */
  private madeOf: string | undefined;
  private readonly stale: (text: string) => void;

  /** @param stale says why the booklet is not that of the text; "" when it is */
  constructor(stale: (text: string) => void) {
    this.stale = stale;
  }

  /** Takes the frame, once it has been loaded. */
  begin(element: HTMLIFrameElement, page: Page): void {
    const made = (element.contentWindow as (Window & typeof globalThis) | null)?.plainworkFrame?.(page);
    if (!made) throw new Error("the booklet's frame has no script");
    this.frame = made;
  }

  /** The measures as a text writes them, where the booklet is that of this text. */
  written(text: string): Block | undefined {
    return this.madeOf === text ? this.last?.plan.recipe.written : undefined;
  }

  get plan(): Plan | undefined {
    return this.last?.plan;
  }

  /** Makes and shows the booklet of a text; gives what is wrong with it, as far as that shows at once. */
  make(text: string): readonly Message[] {
    const { booklet, messages } = this.desk.make(text);
    this.madeOf = booklet ? text : undefined;
    if (booklet) this.show(booklet);
    const errors = messages.filter(({ level }) => level === "error");
    this.stale(
      booklet
        ? ""
        : `The recipe has ${counted(errors)}: ${this.last ? "the booklet stands as it could last be made" : "there is no booklet yet"}.`,
    );
    this.frame?.say(messages);
    return messages;
  }

  private show(booklet: Booklet): void {
    const before = this.last;
    this.last = booklet;
    const { plan, main, contents, measures } = booklet;
    const { title, show: units } = plan.recipe;
    const brings = before?.plan === plan ? changedNote(before, booklet) : undefined;
    this.frame?.show({ title, units, main, contents, measures }, brings);
  }
}

/** The first section of the maker's own that differs, where no measure has changed. */
function changedNote(before: Booklet, after: Booklet): string | undefined {
  const old = new Set(before.main.children);
  const changed = after.main.children.find((section) => !old.has(section));
  return changed?.type === "element" ? String(changed.properties.id) : undefined;
}
