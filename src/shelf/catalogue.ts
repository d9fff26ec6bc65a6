/** The list of every garment built, made from the plan.json files found, so that it is right whoever built them. */
import { join } from "node:path";
import { escapeMarkdown } from "../booklet/escape.ts";
import { placeFile } from "./place.ts";
import { SET_FILE } from "./sizes.ts";
import type { World } from "./world.ts";

interface Entry {
  readonly folder: string;
  readonly title: string;
  readonly waist: string;
  readonly round: string;
  readonly fullness: string;
  readonly buy: string;
}

/** The parts of plan.json that the list reads. */
interface ListedPlan {
  readonly recipe: string;
  readonly size?: string | null;
  readonly values: Record<string, { shown: string } | undefined>;
}

function entryOf(world: World, out: string, folder: string): Entry | undefined {
  const path = join(out, folder, "plan.json");
  if (folder.startsWith(".") || world.kind(path) !== "file") return undefined;
  try {
    const plan = JSON.parse(new TextDecoder().decode(world.read(path))) as ListedPlan;
    const shown = (name: string): string => plan.values[name]?.shown ?? "";
    return {
      folder,
      title: plan.size ? `${plan.recipe}, size ${plan.size}` : String(plan.recipe),
      waist: shown("waist.seam"),
      round: shown("skirt.round"),
      fullness: shown("skirt.fullness"),
      buy: shown("cloth.buy"),
    };
  } catch {
    return undefined;
  }
}

/** The folders of a garment's sizes, each with a plan of its own. */
function sizeFolders(world: World, out: string, folder: string): string[] {
  if (folder.startsWith(".") || world.kind(join(out, folder, SET_FILE)) !== "file") return [];
  return world
    .list(join(out, folder))
    .filter((name) => name.startsWith("size-"))
    .map((name) => `${folder}/${name}`);
}

const escapeHtml = (text: string): string => text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);

const HEADS = ["Garment", "Waist seam", "Round", "Fullness", "Cloth to buy"];

function markdownOf(entries: readonly Entry[]): string {
  const rows = entries.map(
    ({ folder, title, waist, round, fullness, buy }) =>
      `| [${escapeMarkdown(title)}](${encodeURI(folder)}/booklet.md) | ${[waist, round, fullness, buy].map(escapeMarkdown).join(" | ")} |`,
  );
  return [
    "# Garments",
    "",
    `| ${HEADS.join(" | ")} |`,
    `|${" --- |".repeat(HEADS.length)}`,
    ...rows,
    "",
  ].join("\n");
}

const STYLE =
  ":root{color-scheme:light dark}body{font:18px/1.5 Georgia,serif;max-width:52rem;margin:0 auto;padding:1rem}table{border-collapse:collapse;width:100%}th,td{text-align:left;padding:.6rem .6rem .6rem 0;border-bottom:1px solid}.t{overflow-x:auto}";

function htmlOf(entries: readonly Entry[]): string {
  const rows = entries.map(
    ({ folder, title, waist, round, fullness, buy }) =>
      `<tr><th scope="row"><a href="${escapeHtml(encodeURI(folder))}/booklet.html">${escapeHtml(title)}</a></th>${[waist, round, fullness, buy].map((text) => `<td>${escapeHtml(text)}</td>`).join("")}</tr>`,
  );
  return [
    "<!DOCTYPE html>",
    '<html lang="en-GB">',
    "<head>",
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    "<title>Garments</title>",
    `<style>${STYLE}</style>`,
    "</head>",
    "<body>",
    "<main>",
    "<h1>Garments</h1>",
    '<section class="t" aria-label="Garments built" tabindex="0">',
    `<table><thead><tr>${HEADS.map((head) => `<th scope="col">${head}</th>`).join("")}</tr></thead>`,
    `<tbody>${rows.join("\n")}</tbody></table>`,
    "</section>",
    "</main>",
    "</body>",
    "</html>",
    "",
  ].join("\n");
}

/** Writes index.md and index.html of an output folder from the booklets in it. */
export function writeCatalogue(world: World, out: string): void {
  const entries = world
    .list(out)
    .flatMap((folder) => [folder, ...sizeFolders(world, out, folder)])
    .map((folder) => entryOf(world, out, folder))
    .filter((entry) => entry !== undefined);
  placeFile(world, join(out, "index.md"), markdownOf(entries));
  placeFile(world, join(out, "index.html"), htmlOf(entries));
}
