/**
 * The garments of the catalogue's page: only those that are looked at are made and laid out, so that a thousand open as soon
 * as forty. The first stand in the page, the others as text, which a browser without script shows.
 */

/** So many are made at a time: more than any window is high. */
const AT_A_TIME = 36;

const ENTITIES: Readonly<Record<string, string>> = { "&amp;": "&", "&lt;": "<", "&gt;": ">", "&quot;": '"' };

/** Letters to seek by: small, and without accents. */
export const plain = (text: string): string => text.toLowerCase().normalize("NFD").replace(/\p{M}/gu, "");

/** The words of a card as they are read, without its box to tick. */
const wordsOf = (html: string): string =>
  html
    .slice(0, html.indexOf("<label"))
    .replace(/<[^>]*>/g, " ")
    .replace(/&\w+;/g, (one) => ENTITIES[one] ?? one);

export interface Cards {
  readonly size: number;
  /** A card's element; made when it is first asked for. */
  at(i: number): HTMLElement;
  /** The words of all cards, to seek in. */
  texts(): readonly string[];
  /** Shows these, in this order, from the first. */
  list(cards: readonly number[]): void;
}

/**
 * @param list where cards are shown; holds the first of them
 * @param more the button after the list, seen while not all are shown
 * @param rest the text that holds the other cards, one after another
 */
export function cardsOf(list: HTMLElement, more: HTMLElement, rest: string): Cards {
  const made = [...list.children] as (HTMLElement | undefined)[];
  const first = made.length;
  const others = rest.split(/(?=<li data-i)/).filter((html) => html.startsWith("<li"));
  const numbers = [...made, ...others].map((_, i) => i);
  let listed: readonly number[] = numbers;
  let shown = first;
  let texts: readonly string[] | undefined;

  const at = (i: number): HTMLElement => {
    let card = made[i];
    if (!card) {
      const room = document.createElement("template");
      room.innerHTML = others[i - first] ?? "";
      card = room.content.firstElementChild as HTMLElement;
      made[i] = card;
    }
    return card;
  };
  const showTo = (count: number): void => {
    const next = listed[shown];
    const held = document.activeElement === more;
    list.append(...listed.slice(shown, count).map(at));
    shown = Math.min(count, listed.length);
    more.hidden = shown === listed.length;
    // Who stands on the button goes on with the first garment that came.
    if (held && next !== undefined) at(next).querySelector("a")?.focus();
  };

  more.hidden = shown === listed.length;
  more.addEventListener("click", () => showTo(shown + AT_A_TIME));
  new IntersectionObserver(
    (seen) => {
      // Who stands on the button presses it: it does not go from under the hand.
      if (document.activeElement !== more && seen.some(({ isIntersecting }) => isIntersecting))
        showTo(shown + AT_A_TIME);
    },
    { rootMargin: "900px" },
  ).observe(more);
  // On paper stand all that were found, not only those that were scrolled to.
  addEventListener("beforeprint", () => showTo(listed.length));

  return {
    size: numbers.length,
    at,
    texts: () => {
      texts ??= numbers.map((i) => plain(wordsOf(others[i - first] ?? at(i).outerHTML)));
      return texts;
    },
    list: (cards) => {
      listed = cards;
      list.replaceChildren();
      shown = 0;
      showTo(AT_A_TIME);
    },
  };
}
