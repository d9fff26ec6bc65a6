/** What a completion means, beside the list. */

const LABELS: Readonly<Record<string, string>> = {
  means: "",
  written: "written as",
  usual: "usual value",
  limits: "limits",
  example: "example",
  now: "here",
  rule: "rule",
};

/** A small list of words; what is empty is left out. */
export function describe(words: Readonly<Record<string, string>>): HTMLElement {
  const box = document.createElement("div");
  for (const [what, text] of Object.entries(words)) {
    if (text === "") continue;
    const line = document.createElement("p");
    const label = LABELS[what] ?? what;
    line.textContent = label === "" ? text : `${label}: ${text}`;
    box.append(line);
  }
  return box;
}
