/**
 * What runs inside a booklet: steps tick off and take notes, time is kept, any number opens its working, any measure can
 * be changed. Working out anew waits in the core until it is wanted.
 */
import { Bar } from "./bar.ts";
import { dressCells } from "./cells.ts";
import { Diary } from "./diary.ts";
import { core } from "./loader.ts";
import { Measures } from "./measures.ts";
import { Numbers } from "./numbers.ts";
import { dressSteps } from "./steps.ts";
import { Store } from "./store.ts";
import { Times } from "./time.ts";
import { Walk } from "./walk.ts";

const store = new Store(document, document.title);
dressSteps(document, store);
dressCells(document, store);
const times = new Times(document, store);
const walk = new Walk(document, store);
const measures: Measures = new Measures(document, store, () => dress());
const numbers = new Numbers(document, measures, () => core(document));
const diary = new Diary(document, store);
const bar = new Bar(document, store, measures, walk);

/** Puts the page's own things to what was made anew. */
function dress(): void {
  dressSteps(document, store);
  dressCells(document, store);
  times.dress();
  numbers?.dress();
  diary?.dress();
  walk.dress();
}

store.whenReplaced(() => {
  bar.dress();
  void measures.work().then(dress);
});
