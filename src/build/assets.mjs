/** The build's own modules (`plainwork:…`), made the same way for esbuild and for the tests. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { deflateRawSync } from "node:zlib";
import esbuild from "esbuild";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** What some files of the program's own export, bundled on the spot. */
export async function bundled(...files) {
  const built = await esbuild.build({
    stdin: { contents: files.map((file) => `export * from "./${file}";`).join(""), resolveDir: ROOT },
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
  });
  const source = Buffer.from(built.outputFiles[0].contents).toString("base64");
  return import(`data:text/javascript;base64,${source}`);
}

/** What is made of every template, by the chapter's name. */
async function ofTemplates(make, folder = `${ROOT}templates`) {
  const tools = await bundled("src/booklet/template/read.ts", "src/booklet/shape/compile.ts");
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md") && name !== "README.md")
    .sort();
  const made = names.map((file) => {
    const text = readFileSync(`${folder}/${file}`, "utf8");
    try {
      return [file.slice(0, -3), make(tools, text)];
    } catch (error) {
      throw new Error(`templates/${file}: ${error.message}`);
    }
  });
  return JSON.stringify(Object.fromEntries(made));
}

/** Templates as trees, which the Markdown is written by. */
const templateTrees = () => ofTemplates((tools, text) => tools.readTemplate(text, { places: false }));

/** Templates as shapes, which the page is made by. */
const templateShapes = () =>
  ofTemplates((tools, text) => tools.compileShape(tools.readTemplate(text, { places: false })));

/** The sheets of one page as shapes. No page carries them. */
const sheetShapes = () =>
  ofTemplates(
    (tools, text) => tools.compileShape(tools.readTemplate(text, { places: false })),
    `${ROOT}templates/sheets`,
  );

const sha256 = (text) => `sha256-${createHash("sha256").update(text).digest("base64")}`;

/** Papers that the program prints on by itself, each with its style sheets in `src/booklet/paper`. */
const PAPERS = {
  a4: ["a4"],
  letter: ["letter"],
  a5: ["a5", "small"],
  "half-letter": ["half-letter", "small"],
};

/** A style sheet, minified. */
async function css(file, folder = "src/booklet") {
  const text = readFileSync(`${ROOT}${folder}/${file}`, "utf8");
  const { code } = await esbuild.transform(text, { loader: "css", minify: true });
  return code.trim();
}

/** A script for a page, bundled and minified. */
async function pageScript(entry, folder = "src/page") {
  const built = await esbuild.build({
    entryPoints: [`${ROOT}${folder}/${entry}`],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    legalComments: "none",
    write: false,
    plugins: [assets({ page: false })],
  });
  return built.outputFiles[0].text.trim();
}

const packed = (text) => deflateRawSync(text, { level: 9 }).toString("base64");

/**
 * What a page carries, as the source of a module: its script and style with their checksums, and, packed until they are
 * wanted, the core that works everything out again and the chapters it writes.
 */
export async function pageModule() {
  const script = (await pageScript("main.ts")).replaceAll("</", "<\\/");
  const core = await pageScript("core.ts");
  const style = (await css("colours.css")) + (await css("style.css")) + (await css("print.css"));
  const papers = await Promise.all(
    Object.entries(PAPERS).map(async ([name, sheets]) => {
      const text = (await Promise.all(sheets.map((sheet) => css(`paper/${sheet}.css`)))).join("");
      return { name, style: text, hash: sha256(text) };
    }),
  );
  return Object.entries({
    script,
    style,
    scriptHash: sha256(script),
    styleHash: sha256(style),
    sizeStyle: await css("sizes.css"),
    core: packed(core),
    coreHash: sha256(core),
    papers,
    chapters: packed(await templateShapes()),
  })
    .map(([name, text]) => `export const ${name} = ${JSON.stringify(text)};`)
    .join("\n");
}

/** The files of the page that `plainwork open` shows, by their names. */
export async function openFiles() {
  const script = async (entry) => {
    const built = await esbuild.build({
      entryPoints: [`${ROOT}src/open/page/${entry}`],
      bundle: true,
      minify: true,
      format: "iife",
      target: "es2022",
      legalComments: "none",
      write: false,
      plugins: [assets()],
    });
    return built.outputFiles[0].text;
  };
  return {
    "page.js": await script("main.ts"),
    "page.css": (await css("colours.css")) + (await css("../open/page/page.css")),
    "booklet.js": await script("frame/frame.ts"),
    "booklet.css":
      (await css("colours.css")) +
      (await css("style.css")) +
      (await css("print.css")) +
      (await css("../open/page/frame/frame.css")),
  };
}

/** The catalogue's script and style, with their checksums. */
async function catalogueModule() {
  const folder = "src/shelf/catalogue";
  const script = (await pageScript("script.ts", folder)).replaceAll("</", "<\\/");
  const style = (await css("colours.css")) + (await css("style.css", folder));
  return Object.entries({ script, style, scriptHash: sha256(script), styleHash: sha256(style) })
    .map(([name, text]) => `export const ${name} = ${JSON.stringify(text)};`)
    .join("\n");
}

/** The sheets of one page, with their style and its checksum. */
async function sheetsModule() {
  const style = (await css("colours.css")) + (await css("sheets.css"));
  const made = { style, styleHash: sha256(style) };
  const texts = Object.entries(made).map(([name, text]) => `export const ${name} = ${JSON.stringify(text)};`);
  return [`export const shapes = ${await sheetShapes()};`, ...texts].join("\n");
}

export function versionModule() {
  const { version } = JSON.parse(readFileSync(`${ROOT}package.json`, "utf8"));
  return `export default ${JSON.stringify(version)};`;
}

/** @type {Record<string, () => string | Promise<string>>} */
const MODULES = {
  "plainwork:templates": async () => `export default ${await templateTrees()};`,
  "plainwork:shapes": async () => `export default ${await templateShapes()};`,
  "plainwork:page": pageModule,
  "plainwork:catalogue": catalogueModule,
  "plainwork:sheets": sheetsModule,
  "plainwork:version": versionModule,
};

/** In a page the chapters come from the page itself, and a page does not hold a page. */
const IN_PAGE = {
  ...MODULES,
  "plainwork:shapes": () => "export default globalThis.plainworkChapters;",
  "plainwork:sheets": () => {
    throw new Error("a page carries no sheets");
  },
  "plainwork:page": () => {
    throw new Error("the page's script cannot hold itself");
  },
};

/** esbuild plugin. */
export function assets({ page = true } = {}) {
  const modules = page ? MODULES : IN_PAGE;
  return {
    name: "plainwork-assets",
    setup(build) {
      build.onResolve({ filter: /^plainwork:/ }, ({ path }) => ({ path, namespace: "plainwork" }));
      build.onLoad({ filter: /.*/, namespace: "plainwork" }, async ({ path }) => ({
        contents: await modules[path](),
        loader: "js",
        resolveDir: ROOT,
      }));
    },
  };
}

/** The same for vite, which the tests run in. */
export function viteAssets() {
  return {
    name: "plainwork-assets",
    resolveId: (id) => (id in MODULES ? `\0${id}` : undefined),
    load: (id) => (id.startsWith("\0plainwork:") ? MODULES[id.slice(1)]() : undefined),
  };
}
