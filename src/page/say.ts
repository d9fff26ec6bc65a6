/** Tells the reader something: a line at the top of the page that a screen reader speaks too. */

/** Says a text; one place, the newest text, a button to put it away. */
export function say(document: Document, text: string): void {
  let bar = document.querySelector<HTMLElement>(".notice-bar");
  if (!bar) {
    bar = document.createElement("div");
    bar.className = "notice-bar";
    bar.dataset.own = "";
    bar.setAttribute("role", "status");
    document.body.prepend(bar);
  }
  const close = document.createElement("button");
  close.type = "button";
  close.textContent = "Close";
  close.addEventListener("click", () => bar.remove());
  const line = document.createElement("p");
  line.textContent = text;
  bar.replaceChildren(line, close);
}
