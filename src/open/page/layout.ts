/** The page's parts: head, text, booklet; side by side where there is room, one at a time where there is not. */
import { button, make } from "../../page/make.ts";

export interface Layout {
  readonly page: HTMLElement;
  readonly editor: HTMLElement;
  readonly messages: HTMLElement;
  readonly frame: HTMLIFrameElement;
  readonly notices: HTMLElement;
  /** Says how the text stands to the file. */
  say(text: string, isBad: boolean): void;
  /** Says why the booklet is not that of the text; "" when it is. */
  stale(text: string): void;
  /** Shows the text where only one of the two is shown. */
  showText(): void;
}

export interface Buttons {
  undo(): void;
  redo(): void;
  download(): void;
}

const HELP: readonly (readonly [keys: string, words: string])[] = [
  ["Ctrl Space", "what can be written here, with its meaning"],
  ["F8, Shift F8", "next message, the one before"],
  ["Ctrl Z, Ctrl Y", "undo, redo; in the booklet too"],
  ["Ctrl F", "find"],
  ["Ctrl ] and Ctrl [", "indent more, less"],
  ["Tab", "leaves the text for the next part of the page"],
  ["F6", "between text and booklet"],
];

export function layOut(root: HTMLElement, name: string, buttons: Buttons): Layout {
  const saving = make(document, "p", { class: "saving" });
  const editor = make(document, "div", { class: "editor" });
  const messages = make(document, "div", { class: "messages" });
  const stale = make(document, "p", { class: "stale", role: "status", hidden: true });
  const frame = make(document, "iframe", { src: "booklet", title: "The booklet" });
  const notices = make(document, "div", { class: "notices" });
  const recipe = make(
    document,
    "section",
    { class: "pane recipe", "aria-label": "Recipe" },
    editor,
    messages,
  );
  const booklet = make(document, "section", { class: "pane booklet", "aria-label": "Booklet" }, stale, frame);
  const choice = (words: string, pane: string): HTMLButtonElement =>
    button(document, words, () => show(pane), { "aria-pressed": String(pane === "recipe"), class: "switch" });
  const toText = choice("Recipe", "recipe");
  const toBooklet = choice("Booklet", "booklet");
  const show = (pane: string): void => {
    root.dataset.pane = pane;
    toText.setAttribute("aria-pressed", String(pane === "recipe"));
    toBooklet.setAttribute("aria-pressed", String(pane === "booklet"));
  };
  const help = helpDialog();
  root.replaceChildren(
    make(
      document,
      "header",
      { class: "top" },
      make(document, "h1", {}, name),
      make(document, "div", { class: "switches", role: "group", "aria-label": "Show" }, toText, toBooklet),
      saving,
      make(
        document,
        "div",
        { class: "edits" },
        button(document, "Undo", buttons.undo),
        button(document, "Redo", buttons.redo),
      ),
      button(document, "Save a copy", buttons.download),
      button(document, "Keys", () => help.showModal()),
    ),
    notices,
    make(document, "div", { class: "panes" }, recipe, booklet),
    help,
  );
  show("recipe");
  const other = (event: KeyboardEvent): void => {
    if (event.key !== "F6") return;
    event.preventDefault();
    const toFrame = !editor.contains(document.activeElement) ? false : event.view === window;
    show(toFrame ? "booklet" : "recipe");
    if (toFrame)
      (frame.contentDocument?.querySelector<HTMLElement>("nav a, input, [tabindex]") ?? frame).focus();
    else editor.querySelector<HTMLElement>(".cm-content")?.focus();
  };
  document.addEventListener("keydown", other);
  frame.addEventListener("load", () => frame.contentDocument?.addEventListener("keydown", other));
  return {
    page: root,
    editor,
    messages,
    frame,
    notices,
    say: (text, isBad) => {
      if (saving.textContent !== text) saving.textContent = text;
      saving.classList.toggle("bad", isBad);
      // That all goes well is not spoken at every key.
      if (isBad) saving.setAttribute("role", "alert");
      else saving.removeAttribute("role");
    },
    stale: (text) => {
      if (stale.textContent !== text) stale.textContent = text;
      stale.hidden = text === "";
    },
    showText: () => show("recipe"),
  };
}

function helpDialog(): HTMLDialogElement {
  const list = make(document, "dl");
  for (const [keys, words] of HELP)
    list.append(make(document, "dt", {}, keys), make(document, "dd", {}, words));
  const dialog: HTMLDialogElement = make(
    document,
    "dialog",
    { "aria-label": "Keys" },
    make(document, "h2", {}, "Keys"),
    list,
    make(
      document,
      "p",
      {},
      "Every change is saved by itself. Change a measure in the booklet and it is changed in the text; touch a number there to see how it was worked out.",
    ),
    button(document, "Close", () => dialog.close()),
  );
  return dialog;
}
