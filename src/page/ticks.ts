/** Tick boxes before every step. Kept in the browser's own storage; when it refuses, that is said once. */

const KEY_START = "plainwork:ticks:";

/** Reads what was ticked; undefined when storage is forbidden. */
function load(key: string): Set<string> | undefined {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "[]");
    return new Set(Array.isArray(kept) ? kept.filter((item) => typeof item === "string") : []);
  } catch {
    return undefined;
  }
}

function keep(key: string, ticked: ReadonlySet<string>): boolean {
  try {
    localStorage.setItem(key, JSON.stringify([...ticked]));
    return true;
  } catch {
    return false;
  }
}

function say(document: Document, text: string): void {
  if (document.querySelector(".notice-bar")) return;
  const bar = document.createElement("p");
  bar.className = "notice-bar";
  bar.setAttribute("role", "status");
  bar.textContent = text;
  document.body.prepend(bar);
}

const FORBIDDEN =
  "Ticks cannot be kept: this browser refuses storage for this page. They are lost when it is closed; print the page to keep them.";

/** Puts a tick box before every step. */
export function tickSteps(document: Document): void {
  const key = KEY_START + document.title;
  const kept = load(key);
  const ticked = kept ?? new Set<string>();
  if (!kept) say(document, FORBIDDEN);
  for (const chapter of document.querySelectorAll("section.chapter")) {
    const steps = chapter.querySelectorAll(".steps > li");
    steps.forEach((step, i) => {
      const id = `${chapter.id}/${i + 1}`;
      const frame = document.createElement("label");
      frame.className = "tick";
      const box = document.createElement("input");
      box.type = "checkbox";
      box.checked = ticked.has(id);
      box.setAttribute("aria-label", `step ${i + 1} done`);
      step.classList.toggle("done", box.checked);
      box.addEventListener("change", () => {
        if (box.checked) ticked.add(id);
        else ticked.delete(id);
        step.classList.toggle("done", box.checked);
        if (!keep(key, ticked)) say(document, FORBIDDEN);
      });
      frame.append(box);
      step.prepend(frame);
    });
  }
}
