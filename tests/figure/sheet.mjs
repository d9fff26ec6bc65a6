/**
 * Writes tests/figure/sheet.html: every figure of every demo in output/ on one page, for a person to look over, in
 * colour or grey, light or dark, wide or as narrow as a telephone; and changed drawings that wait, old beside new.
 */
import { existsSync, readdirSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const OUTPUT = new URL("../../output/", import.meta.url);
const CHANGED = new URL("./changed/", import.meta.url);
const SHEET = new URL("./sheet.html", import.meta.url);

const names = (folder) => (existsSync(folder) ? readdirSync(folder).sort() : []);
const figure = (path, words) =>
  `<figure><img src="${path}" alt="" loading="lazy"><figcaption>${words}</figcaption></figure>`;

/** The page. Changed drawings are shown only where there are any, so that the committed sheet does not depend on them. */
export function sheet() {
  const demos = names(OUTPUT).filter((name) => existsSync(new URL(`${name}/figures/`, OUTPUT)));
  const kept = demos.map(
    (demo) =>
      `<h2>${demo}</h2>\n${names(new URL(`${demo}/figures/`, OUTPUT))
        // The small picture for lists has no words to look over.
        .filter((file) => file !== "picture.svg")
        .map((file) => figure(`../../output/${demo}/figures/${file}`, file.replace(".svg", "")))
        .join("\n")}`,
  );
  const changed = names(CHANGED).map((file) => figure(`changed/${file}`, file.replace(".svg", "")));
  return `<!doctype html>
<html lang="en-GB">
<meta charset="utf-8">
<title>Figures to look over</title>
<style>
body { font-family: sans-serif; margin: 1rem }
figure { display: inline-block; vertical-align: top; margin: 4px; border: 1px solid #ccc }
img { width: 520px; display: block }
body:has(#phone:checked) img { width: 328px }
body:has(#grey:checked) img { filter: grayscale(1) contrast(0.7) }
body:has(#dark:checked) img { filter: invert(1) }
figcaption { font-size: 0.8rem; padding: 2px 6px }
</style>
<h1>Figures to look over</h1>
<p><label><input type="checkbox" id="phone"> telephone</label> <label><input type="checkbox" id="grey"> grey</label> <label><input type="checkbox" id="dark"> dark</label></p>
${changed.length > 0 ? `<h2>changed, not kept yet</h2>\n${changed.join("\n")}\n` : ""}${kept.join("\n")}
</html>
`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(SHEET, sheet());
  console.log(`wrote ${fileURLToPath(SHEET)}`);
}
