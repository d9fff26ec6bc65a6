/** A copy of a demo, opened: by the program's own server in this process, or by the built command line. */
import { type ChildProcess, spawn } from "node:child_process";
import { cpSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Opened, openProject } from "../../src/open/server.ts";
import { nodeWorld } from "../../src/shelf/world.ts";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));

export interface Copy {
  readonly folder: string;
  readonly recipe: string;
  read(): string;
  remove(): void;
}

/** A demo in a folder of its own. */
export function copyOf(demo: string): Copy {
  const folder = mkdtempSync(join(tmpdir(), "plainwork-open-"));
  cpSync(join(ROOT, "demo-projects", demo), folder, { recursive: true });
  const recipe = join(folder, "recipe.md");
  return {
    folder,
    recipe,
    read: () => readFileSync(recipe, "utf8"),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

export const openHere = ({ recipe }: Copy): Promise<Opened> =>
  openProject({
    world: nodeWorld(process, join(ROOT, "dist/open")),
    project: { recipe, shown: "my-skirt/recipe.md", name: "my-skirt" },
    port: 0,
    orAnother: true,
  });

export interface Running {
  readonly address: string;
  readonly child: ChildProcess;
  /** Ends it at once and waits until it has ended. */
  kill(): Promise<void>;
}

/** The built program, as a maker starts it. */
export async function start({ folder }: Copy, ...words: string[]): Promise<Running> {
  const child = spawn(
    process.execPath,
    [join(ROOT, "dist/plainwork.cjs"), "open", folder, "--no-browser", ...words],
    { stdio: ["ignore", "pipe", "inherit"] },
  );
  const address = await new Promise<string>((found, failed) => {
    let said = "";
    child.once("exit", (code) => failed(new Error(`it ended with ${code}: ${said}`)));
    child.stdout.on("data", (chunk) => {
      said += chunk;
      const line = /^open (\S+)/m.exec(said);
      if (line) found(line[1] as string);
    });
  });
  return {
    address,
    child,
    kill: () =>
      new Promise((ended) => {
        child.once("exit", () => ended());
        child.kill("SIGKILL");
      }),
  };
}

/** Saves as the page does. */
export function put(address: string, data: unknown): Promise<Response> {
  return fetch(`${address}recipe`, {
    method: "PUT",
    headers: { "Content-Type": "application/json", Origin: new URL(address).origin },
    body: JSON.stringify(data),
  });
}
