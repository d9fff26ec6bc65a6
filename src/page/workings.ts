/** Any number opens its working: what it is, the formula in names, the formula in numbers, the rule it rests on. */

interface Working {
  readonly shown: string;
  readonly about: string;
  readonly how: string;
  readonly inNumbers: string;
  readonly rule: string;
}

function row(document: Document, list: HTMLElement, term: string, text: string): void {
  if (text === "") return;
  const dt = document.createElement("dt");
  dt.textContent = term;
  const dd = document.createElement("dd");
  dd.textContent = text;
  list.append(dt, dd);
}

/** Makes every number in the text a button that shows its working in a dialog. */
export function openWorkings(document: Document): void {
  const source = document.getElementById("values");
  if (!source) return;
  const workings = JSON.parse(source.textContent ?? "{}") as Record<string, Working>;
  const dialog = document.createElement("dialog");
  dialog.setAttribute("aria-label", "How this number was worked out");
  const list = document.createElement("dl");
  const close = document.createElement("button");
  close.type = "button";
  close.textContent = "Close";
  close.addEventListener("click", () => dialog.close());
  dialog.append(list, close);
  document.body.append(dialog);

  const open = (name: string): void => {
    const working = Object.hasOwn(workings, name) ? workings[name] : undefined;
    if (!working) return;
    list.replaceChildren();
    row(document, list, "what", working.about);
    row(document, list, "value", `${name} = ${working.shown}`);
    row(document, list, "worked out as", working.how);
    row(document, list, "in numbers", working.inNumbers === working.how ? "" : working.inNumbers);
    row(document, list, "rule", working.rule);
    dialog.showModal();
  };
  for (const number of document.querySelectorAll<HTMLElement>("data[data-name]")) {
    number.tabIndex = 0;
    number.setAttribute("role", "button");
    number.classList.add("opens");
    number.addEventListener("click", () => open(number.dataset.name ?? ""));
    number.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      open(number.dataset.name ?? "");
    });
  }
}
