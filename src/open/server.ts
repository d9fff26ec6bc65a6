/** The page's own server: on this machine only, for one recipe, until it is stopped. */
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { basename, dirname } from "node:path";
import { LARGEST_RECIPE } from "../recipe/limits.ts";
import type { Project } from "../shelf/find.ts";
import type { World } from "../shelf/world.ts";
import { readBeside, readPhotograph } from "./beside.ts";
import { judge, newSecret } from "./guard.ts";
import { newNonce, pageHeaders, plainHeaders } from "./headers.ts";
import { framePage, mainPage } from "./pages.ts";
import { checksumOf, RecipeFile } from "./recipe-file.ts";
import { Listeners } from "./tell.ts";
import { watchProject } from "./watch.ts";
import { type Asset, readWish } from "./wish.ts";

/** Any letter may be written with six characters in JSON. */
const LARGEST_WISH = 6 * LARGEST_RECIPE + 10_000;

export interface Opened {
  /** Where the page is, secret included. */
  readonly address: string;
  readonly port: number;
  close(): Promise<void>;
}

export interface Opening {
  readonly world: World;
  readonly project: Project;
  /** The port to listen on, if it is free: 0 for any. */
  readonly port: number;
  /** Take another port where that one is not free? */
  readonly orAnother: boolean;
}

/** Opens a project. Rejects where no port can be listened on. */
export async function openProject({ world, project, port, orAnother }: Opening): Promise<Opened> {
  const site = new Site(world, project);
  const server = createServer((asked, answer) => void site.answer(asked, answer));
  server.headersTimeout = 10_000;
  server.requestTimeout = 20_000;
  server.maxConnections = 100;
  await listen(server, port).catch((error: NodeJS.ErrnoException) => {
    if (orAnother && (error.code === "EADDRINUSE" || error.code === "EACCES")) return listen(server, 0);
    // Its beat would keep the program from ending.
    site.listeners.close();
    throw error;
  });
  site.port = (server.address() as AddressInfo).port;
  const unwatch = watchProject(project.recipe, {
    recipe: () => site.recipeChanged(),
    beside: () => site.listeners.tell("beside", {}),
  });
  return {
    address: `http://127.0.0.1:${site.port}/${site.secret}/`,
    port: site.port,
    close: () =>
      new Promise((done) => {
        unwatch();
        site.listeners.close();
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

const listen = (server: Server, port: number): Promise<void> =>
  new Promise((done, failed) => {
    server.once("error", failed);
    server.listen({ host: "127.0.0.1", port, exclusive: true }, () => {
      server.off("error", failed);
      done();
    });
  });

class Site {
  port = 0;
  readonly secret = newSecret();
  readonly listeners = new Listeners();
  private readonly world: World;
  private readonly project: Project;
  private readonly file: RecipeFile;
  /** The checksum that the pages were told of last. */
  private told: string;

  constructor(world: World, project: Project) {
    this.world = world;
    this.project = project;
    this.file = new RecipeFile(project.recipe);
    this.told = this.file.read()?.checksum ?? "";
  }

  recipeChanged(): void {
    const checksum = this.file.read()?.checksum ?? "";
    if (checksum === this.told) return;
    this.told = checksum;
    this.listeners.tell("recipe", { checksum });
  }

  async answer(asked: IncomingMessage, answer: ServerResponse): Promise<void> {
    const { method = "", url = "", headers } = asked;
    const verdict = judge({ method, url, headers }, this.port, this.secret);
    try {
      if ("refused" in verdict) {
        refuse(asked, answer, verdict.refused, verdict.why);
        return;
      }
      if (method === "PUT") await this.write(verdict.path, asked, answer);
      else this.read(verdict.path, asked, answer);
    } catch (error) {
      const { code = "" } = error as NodeJS.ErrnoException;
      const why = FAULTS[code] ?? "the file could not be read or written";
      if (!answer.headersSent) refuse(asked, answer, 500, `${why}${code ? ` (${code})` : ""}`);
      else answer.destroy();
    }
  }

  private read(path: string, asked: IncomingMessage, answer: ServerResponse): void {
    const asset = ASSETS[path];
    if (path === "" || path === "booklet") {
      const nonce = newNonce();
      answer.writeHead(200, pageHeaders(nonce, path === "booklet"));
      const name = basename(dirname(this.project.recipe));
      answer.end(path === "" ? mainPage(nonce, name) : framePage(nonce));
    } else if (asset) send(answer, asset.type, this.world.asset(asset.file));
    else if (path === "project") json(answer, 200, this.whole());
    else if (path === "recipe") json(answer, 200, { recipe: this.file.read() ?? null });
    else if (path === "events") this.listeners.add(asked, answer);
    else if (path.startsWith("kept/")) {
      const version = this.file.readKept(path.slice(5));
      if (version) json(answer, 200, version);
      else refuse(asked, answer, 404, NOT_HERE);
    } else if (path.startsWith("photos/")) {
      const found = readPhotograph(this.world, this.project, path);
      if (found instanceof Uint8Array) send(answer, "application/octet-stream", found);
      else if (found === "missing") refuse(asked, answer, 404, NOT_HERE);
      else json(answer, 413, found);
    } else refuse(asked, answer, 404, NOT_HERE);
  }

  /** All texts of the project. */
  private whole() {
    return {
      id: checksumOf(this.project.recipe),
      name: basename(dirname(this.project.recipe)),
      shown: this.project.shown,
      recipe: this.file.read() ?? null,
      kept: this.file.keptVersions(),
      ...readBeside(this.world, this.project),
    };
  }

  private async write(path: string, asked: IncomingMessage, answer: ServerResponse): Promise<void> {
    if (path !== "recipe" && path !== "kept") {
      refuse(asked, answer, 404, NOT_HERE);
      return;
    }
    const wish = await readWish(asked, LARGEST_WISH, LARGEST_RECIPE);
    if ("refused" in wish) {
      refuse(asked, answer, wish.refused, wish.why);
      return;
    }
    const { base, text, kept } = wish;
    if (path === "kept") {
      json(answer, 200, { kept: this.file.keep(text, kept) });
      return;
    }
    const saved = this.file.save(base, text, kept);
    if (saved.is === "saved" && saved.checksum !== this.told) {
      this.told = saved.checksum;
      this.listeners.tell("recipe", { checksum: saved.checksum });
    }
    json(answer, saved.is === "saved" ? 200 : 409, saved);
  }
}

const NOT_HERE = "There is no such thing here.";

const FAULTS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EDQUOT: "the disk quota is used up",
  EROFS: "the disk can only be read",
  EACCES: "there is no permission to write the recipe",
  EPERM: "it is not permitted to write the recipe",
};

/** What the page is made of, as the build left it beside the program. */
const ASSETS: Readonly<Record<string, Asset>> = {
  "page.js": { file: "page.js", type: "text/javascript; charset=utf-8" },
  "page.css": { file: "page.css", type: "text/css; charset=utf-8" },
  "booklet.js": { file: "booklet.js", type: "text/javascript; charset=utf-8" },
  "booklet.css": { file: "booklet.css", type: "text/css; charset=utf-8" },
};

function send(answer: ServerResponse, type: string, bytes: Uint8Array): void {
  answer.writeHead(200, plainHeaders(type));
  answer.end(bytes);
}

function json(answer: ServerResponse, status: number, data: unknown): void {
  answer.writeHead(status, plainHeaders("application/json; charset=utf-8"));
  answer.end(JSON.stringify(data));
}

/** What is refused is not read any further. */
function refuse(asked: IncomingMessage, answer: ServerResponse, status: number, why: string): void {
  answer.writeHead(status, { ...plainHeaders("text/plain; charset=utf-8"), Connection: "close" });
  answer.end(`${why}\n`);
  if (!asked.complete) asked.pause();
}
