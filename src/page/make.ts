/** Makes the page's own elements. All carry `data-own`, so that a booklet worked out anew passes them over. */

type Given = Readonly<Record<string, string | boolean | ((event: Event) => void)>>;

/** An element with attributes, listeners (`onclick`) and children. */
export function make<Tag extends keyof HTMLElementTagNameMap>(
  document: Document,
  tag: Tag,
  given: Given = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag);
  made.dataset.own = "";
  for (const [name, value] of Object.entries(given)) {
    if (typeof value === "function") made.addEventListener(name.slice(2), value);
    else if (value === true) made.setAttribute(name, "");
    else if (value !== false) made.setAttribute(name, value);
  }
  made.append(...children);
  return made;
}

/** A button with its words. */
export const button = (
  document: Document,
  words: string,
  onclick: () => void,
  given: Given = {},
): HTMLButtonElement => make(document, "button", { type: "button", onclick, ...given }, words);

let labels = 0;

/** A field under its label. */
export function labelled(
  document: Document,
  words: string,
  field: HTMLInputElement | HTMLTextAreaElement,
): HTMLParagraphElement {
  labels += 1;
  if (field.id === "") field.id = `own-${labels}`;
  return make(document, "p", { class: "field" }, make(document, "label", { for: field.id }, words), field);
}
