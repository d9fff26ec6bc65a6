/** The page's way to its server. All addresses are beside the page's own, which holds the secret. */
import type { FoundFile } from "../../booklet/notebook/photographs.ts";
import type { Answer, Project, Version } from "./project.ts";

/** Longer than any save takes; after it the server counts as away. */
const PATIENCE = 5000;

async function ask(path: string, given: RequestInit = {}): Promise<Response | undefined> {
  try {
    return await fetch(path, { cache: "no-store", signal: AbortSignal.timeout(PATIENCE), ...given });
  } catch {
    return undefined;
  }
}

/** The project's texts; undefined where they cannot be had. */
export async function fetchProject(): Promise<Project | undefined> {
  const answer = await ask("project");
  return answer?.ok ? ((await answer.json()) as Project) : undefined;
}

export async function fetchRecipe(): Promise<{ recipe: Version | null } | undefined> {
  const answer = await ask("recipe");
  return answer?.ok ? ((await answer.json()) as { recipe: Version | null }) : undefined;
}

export async function fetchKept(name: string): Promise<Version | undefined> {
  const answer = await ask(`kept/${name}`);
  return answer?.ok ? ((await answer.json()) as Version) : undefined;
}

export async function fetchPhotograph(path: string): Promise<FoundFile> {
  const answer = await ask(path);
  if (answer?.ok) return new Uint8Array(await answer.arrayBuffer());
  return answer?.status === 413 ? ((await answer.json()) as FoundFile) : "missing";
}

const put = (path: string, data: unknown): Promise<Response | undefined> =>
  ask(path, { method: "PUT", headers: { "Content-Type": "application/json" }, body: JSON.stringify(data) });

/** Saves a text that was made of the version with this checksum. */
export async function save(base: string, text: string, kept?: string): Promise<Answer> {
  const answer = await put("recipe", { base, text, ...(kept === undefined ? {} : { kept }) });
  if (!answer) return { is: "away" };
  if (answer.status === 200 || answer.status === 409) return (await answer.json()) as Answer;
  if (answer.status === 404 || answer.status === 421) return { is: "stale" };
  return { is: "refused", why: (await answer.text()).trim() };
}

/** Keeps a text beside the recipe; gives the file's name. */
export async function keep(text: string, kept?: string): Promise<string | undefined> {
  const answer = await put("kept", { base: "", text, ...(kept === undefined ? {} : { kept }) });
  return answer?.ok ? ((await answer.json()) as { kept: string }).kept : undefined;
}

export interface Told {
  /** The recipe's file has this checksum now. */
  recipe(checksum: string): void;
  /** Something beside it changed. */
  beside(): void;
  /** Is the server there? */
  there(is: boolean): void;
}

/** Listens to what the server tells, for as long as the page is open. */
export function listen(told: Told): void {
  const events = new EventSource("events");
  let timer: ReturnType<typeof setTimeout> | undefined;
  const heard = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => told.there(false), SILENCE);
    told.there(true);
  };
  events.addEventListener("alive", heard);
  events.addEventListener("recipe", (event) => {
    heard();
    told.recipe((JSON.parse((event as MessageEvent<string>).data) as { checksum: string }).checksum);
  });
  events.addEventListener("beside", () => {
    heard();
    told.beside();
  });
  events.addEventListener("error", () => {
    clearTimeout(timer);
    told.there(false);
    // A browser gives up where the answer is no stream, as an earlier secret's is not.
    if (events.readyState === EventSource.CLOSED) setTimeout(() => listen(told), 2000);
  });
}

/** The server gives a sign of life every five seconds. */
const SILENCE = 12_000;
