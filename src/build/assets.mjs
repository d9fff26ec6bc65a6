/** The build's own modules (`plainwork:…`), made the same way for esbuild and for the tests. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import esbuild from "esbuild";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** What a file of the program's own exports, bundled on the spot. */
export async function bundled(file) {
  const built = await esbuild.build({
    entryPoints: [`${ROOT}${file}`],
    bundle: true,
    format: "esm",
    platform: "node",
    write: false,
  });
  const source = Buffer.from(built.outputFiles[0].contents).toString("base64");
  return import(`data:text/javascript;base64,${source}`);
}

/** Chapter names and their templates as trees, as the source of a module. */
export async function templatesModule(folder = `${ROOT}templates`) {
  const { readTemplate } = await bundled("src/booklet/template/read.ts");
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md") && name !== "README.md")
    .sort();
  const trees = names.map((file) => {
    const text = readFileSync(`${folder}/${file}`, "utf8");
    try {
      return [file.slice(0, -3), readTemplate(text, { places: false })];
    } catch (error) {
      throw new Error(`templates/${file}: ${error.message}`);
    }
  });
  return `export default ${JSON.stringify(Object.fromEntries(trees))};`;
}

const sha256 = (text) => `sha256-${createHash("sha256").update(text).digest("base64")}`;

/** The page's script, bundled and minified, and its style, as the source of a module. */
export async function pageModule() {
  const built = await esbuild.build({
    entryPoints: [`${ROOT}src/page/main.ts`],
    bundle: true,
    minify: true,
    format: "iife",
    target: "es2022",
    write: false,
    plugins: [assets({ page: false })],
  });
  const script = built.outputFiles[0].text.trim().replaceAll("</", "<\\/");
  const css = await esbuild.transform(readFileSync(`${ROOT}src/booklet/style.css`, "utf8"), {
    loader: "css",
    minify: true,
  });
  const style = css.code.trim();
  return [
    `export const script = ${JSON.stringify(script)};`,
    `export const style = ${JSON.stringify(style)};`,
    `export const scriptHash = ${JSON.stringify(sha256(script))};`,
    `export const styleHash = ${JSON.stringify(sha256(style))};`,
  ].join("\n");
}

export function versionModule() {
  const { version } = JSON.parse(readFileSync(`${ROOT}package.json`, "utf8"));
  return `export default ${JSON.stringify(version)};`;
}

/** @type {Record<string, () => string | Promise<string>>} */
const MODULES = {
  "plainwork:templates": () => templatesModule(),
  "plainwork:page": pageModule,
  "plainwork:version": versionModule,
};

/** esbuild plugin. The page's own bundle may not contain itself. */
export function assets({ page = true } = {}) {
  return {
    name: "plainwork-assets",
    setup(build) {
      build.onResolve({ filter: /^plainwork:/ }, ({ path }) => ({ path, namespace: "plainwork" }));
      build.onLoad({ filter: /.*/, namespace: "plainwork" }, async ({ path }) => {
        if (path === "plainwork:page" && !page) throw new Error("the page's script cannot hold itself");
        return { contents: await MODULES[path](), loader: "js", resolveDir: ROOT };
      });
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
