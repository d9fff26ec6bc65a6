/** `plainwork open`: the recipe as text beside its booklet, in a page on this machine, until it is stopped. */
import { createHash } from "node:crypto";
import { realpathSync } from "node:fs";
import { findProjects, type Project, UsageError } from "../shelf/find.ts";
import { readText } from "../shelf/texts.ts";
import type { World } from "../shelf/world.ts";
import { openBrowser } from "./browser.ts";
import { openProject } from "./server.ts";

interface Arguments {
  readonly path: string;
  readonly port: number | undefined;
  /** Undefined where the surroundings decide. */
  readonly browser: boolean | undefined;
}

function readArguments(words: readonly string[]): Arguments {
  const paths: string[] = [];
  let port: number | undefined;
  let browser: boolean | undefined;
  for (let i = 0; i < words.length; i += 1) {
    const word = words[i] as string;
    if (word === "--browser") browser = true;
    else if (word === "--no-browser") browser = false;
    else if (word === "--port" || word.startsWith("--port=")) {
      const text = word === "--port" ? words[++i] : word.slice(7);
      port = /^\d{1,5}$/.test(text ?? "") ? Number(text) : Number.NaN;
      if (!(port === 0 || (port >= 1024 && port <= 65535)))
        throw new UsageError("--port needs a number from 1024 to 65535 after it, or 0 for any that is free");
    } else if (word.startsWith("-")) throw new UsageError(`"${word}" is not an option of open`);
    else paths.push(word);
  }
  const [path, ...others] = paths;
  if (path === undefined) throw new UsageError("open needs the folder of a recipe");
  if (others.length > 0) throw new UsageError("open takes one recipe at a time");
  return { path, port, browser };
}

function theProject(world: World, path: string): Project {
  const projects = findProjects(world, [path]);
  const [project, ...others] = projects;
  if (!project || others.length > 0) {
    const names = projects.map(({ name }) => name).join(", ");
    throw new UsageError(`"${path}" holds ${projects.length} recipes (${names}): name the folder of one`);
  }
  // A link is followed, so that saving does not put a file in its place.
  return { ...project, recipe: realpathSync(project.recipe) };
}

/** The same recipe has the same port again where it is free, so that a browser finds what it kept for it. */
const usualPort = (recipe: string): number =>
  20_000 + (createHash("sha256").update(recipe).digest().readUInt16BE(0) % 20_000);

/** Resolves with the exit code when it is stopped: by Ctrl-C, or by `stopped`. */
export async function open(
  words: readonly string[],
  world: World,
  stopped: Promise<unknown> = interrupted(),
): Promise<number> {
  const { path, port, browser } = readArguments(words);
  const project = theProject(world, path);
  const text = readText(world, project.recipe, "recipe", "keep pictures in photos/, not in the text");
  if (typeof text !== "string") {
    world.err(`plainwork: ${project.shown}: ${text.text}\n  do: ${text.hint}\n`);
    return 1;
  }
  const opened = await openProject({
    world,
    project,
    port: port ?? usualPort(project.recipe),
    orAnother: port === undefined,
  }).catch((error: NodeJS.ErrnoException) => {
    if (error.code !== "EADDRINUSE") throw error;
    throw new UsageError(`another program listens on port ${port}: leave --port out, or name another`);
  });
  world.out(`open ${opened.address}\n`);
  world.out(
    `It is for this machine only. What you type is saved in ${project.shown}. Ctrl-C here ends it.\n`,
  );
  if (browser ?? world.terminal) openBrowser(opened.address, world.platform);
  await stopped;
  await opened.close();
  world.out(`\nstopped; the recipe is ${project.shown}\n`);
  return 0;
}

const interrupted = (): Promise<void> =>
  new Promise((done) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => done());
  });
