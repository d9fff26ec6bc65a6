/** The build's own modules (`plainwork:…`), made the same way for esbuild and for the tests. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import esbuild from "esbuild";
import Handlebars from "handlebars";

export const ROOT = fileURLToPath(new URL("../../", import.meta.url));

/** Chapter names and their compiled templates, as the source of a module. */
export function templatesModule(folder = `${ROOT}templates`) {
  const names = readdirSync(folder)
    .filter((name) => name.endsWith(".md") && name !== "README.md")
    .sort();
  const specs = names.map((file) => {
    const text = readFileSync(`${folder}/${file}`, "utf8");
    const spec = Handlebars.precompile(text, { knownHelpersOnly: false, srcName: undefined });
    return `${JSON.stringify(file.slice(0, -3))}: ${spec}`;
  });
  return `export default {\n${specs.join(",\n")}\n};`;
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
