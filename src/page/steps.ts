/** Steps tick off and take notes, and every chapter knows how far it is. */
import { button, labelled, make } from "./make.ts";
import type { Store } from "./store.ts";

/** Every step of the booklet with its name, `gauging/3`. */
export function stepsOf(
  document: Document,
): { id: string; chapter: Element; step: HTMLElement; n: number }[] {
  return [...document.querySelectorAll("main > section")].flatMap((chapter) =>
    [...chapter.querySelectorAll<HTMLElement>(":scope > .steps > li")].map((step, i) => ({
      id: `${chapter.id}/${i + 1}`,
      chapter,
      step,
      n: i + 1,
    })),
  );
}

/** Puts ticks and notes to all steps that have none yet, and brings all in line with what is kept. */
export function dressSteps(document: Document, store: Store): void {
  for (const { id, step, n } of stepsOf(document)) {
    if (!step.querySelector(":scope > .tick")) dress(document, store, step, id, n);
    const done = store.kept.ticked.includes(id);
    (step.querySelector(":scope > .tick input") as HTMLInputElement).checked = done;
    step.classList.toggle("done", done);
    showNote(document, store, step, id);
  }
  showStates(document, store);
}

function dress(document: Document, store: Store, step: HTMLElement, id: string, n: number): void {
  const box = make(document, "input", { type: "checkbox", "aria-label": `step ${n} done` });
  box.addEventListener("change", () => {
    const { ticked } = store.kept;
    store.keep({ ticked: box.checked ? [...ticked, id] : ticked.filter((one) => one !== id) });
    step.classList.toggle("done", box.checked);
    showStates(document, store);
  });
  step.prepend(make(document, "label", { class: "tick" }, box));
  step.append(
    button(document, "Note", () => openNote(document, store, step, id), {
      class: "note-button",
      "aria-label": `note on step ${n}`,
    }),
  );
}

function openNote(document: Document, store: Store, step: HTMLElement, id: string): void {
  if (!step.querySelector(":scope > .note")) writeNote(document, store, step, id);
  step.querySelector<HTMLTextAreaElement>(":scope > .note textarea")?.focus();
}

function writeNote(document: Document, store: Store, step: HTMLElement, id: string): void {
  const area = make(document, "textarea", { rows: "2", maxlength: "20000" });
  area.value = store.kept.notes[id] ?? "";
  area.addEventListener("input", () => {
    const { [id]: _, ...others } = store.kept.notes;
    store.keep({ notes: area.value === "" ? others : { ...others, [id]: area.value } });
  });
  const frame = make(
    document,
    "div",
    { class: "note" },
    labelled(document, `Note on step ${id.split("/")[1]}`, area),
  );
  step.append(frame);
}

/** A note that is kept is shown, and one that is gone elsewhere goes here. */
function showNote(document: Document, store: Store, step: HTMLElement, id: string): void {
  const text = store.kept.notes[id];
  const area = step.querySelector<HTMLTextAreaElement>(":scope > .note textarea");
  if (text !== undefined && !area) writeNote(document, store, step, id);
  else if (area && area !== document.activeElement && area.value !== (text ?? "")) area.value = text ?? "";
}

/** How far each chapter is, beside its name in the list and under its heading. */
function showStates(document: Document, store: Store): void {
  const counts = new Map<string, { done: number; all: number }>();
  for (const { id, chapter } of stepsOf(document)) {
    const count = counts.get(chapter.id) ?? { done: 0, all: 0 };
    counts.set(chapter.id, {
      done: count.done + (store.kept.ticked.includes(id) ? 1 : 0),
      all: count.all + 1,
    });
  }
  for (const link of document.querySelectorAll<HTMLAnchorElement>("nav.contents a")) {
    const chapter = link.hash.slice(1);
    const count = counts.get(chapter);
    if (!count) continue;
    const words = stateOf(count);
    put(document, link.parentElement as Element, words);
    const heading = document.querySelector(`#${CSS.escape(chapter)} > h2`);
    if (heading) putAfter(document, heading, words);
  }
}

function stateOf({ done, all }: { done: number; all: number }): string {
  if (done === 0) return `${all} ${all === 1 ? "step" : "steps"}, none done`;
  return done === all ? `all ${all} steps done ✓` : `${done} of ${all} steps done`;
}

function put(document: Document, item: Element, words: string): void {
  let state = item.querySelector(":scope > .state");
  if (!state) {
    state = make(document, "small", { class: "state" });
    item.append(state);
  }
  if (state.textContent !== words) state.textContent = words;
}

function putAfter(document: Document, heading: Element, words: string): void {
  let state = heading.nextElementSibling;
  if (!state?.classList.contains("state")) {
    state = make(document, "p", { class: "state" });
    heading.after(state);
  }
  if (state.textContent !== words) state.textContent = words;
}
