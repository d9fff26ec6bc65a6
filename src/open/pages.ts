/** The two pages: recipe and booklet side by side, and the frame that the booklet stands in. */
import { escapeHtml } from "../booklet/escape-html.ts";

const head = (title: string, sheet: string, nonce: string): string[] => [
  "<!DOCTYPE html>",
  '<html lang="en-GB">',
  "<head>",
  '<meta charset="utf-8">',
  '<meta name="viewport" content="width=device-width, initial-scale=1">',
  `<title>${escapeHtml(title)}</title>`,
  '<link rel="icon" href="data:,">',
  `<link rel="stylesheet" href="${sheet}" nonce="${nonce}">`,
  "</head>",
];

/** Everything in it is made by its script. */
export const mainPage = (nonce: string, name: string): string =>
  [
    ...head(`${name}: recipe and booklet`, "page.css", nonce),
    "<body>",
    '<main id="page"><p>The recipe is being opened. It needs a browser that runs scripts.</p></main>',
    `<script src="page.js" nonce="${nonce}"></script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");

/** Its parts are put in from outside. */
export const framePage = (nonce: string): string =>
  [
    ...head("The booklet", "booklet.css", nonce),
    "<body>",
    "<header><h1></h1></header>",
    '<nav class="contents" aria-label="Chapters"></nav>',
    "<main></main>",
    '<section id="your-measures"></section>',
    `<script src="booklet.js" nonce="${nonce}"></script>`,
    "</body>",
    "</html>",
    "",
  ].join("\n");
