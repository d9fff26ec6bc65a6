/** A world in memory: streams that are kept, a file system that can be made to fail. */
import { posix } from "node:path";
import type { World } from "../../src/shelf/world.ts";

export interface MemoryWorld extends World {
  readonly files: Map<string, string>;
  readonly said: { out: string; err: string };
  /** Called before every change of the file system; may throw. */
  fault: (doing: string, path: string) => void;
  /** Settings of the surroundings. */
  readonly settings: Record<string, string>;
  /** What a program does when it is run: its words go in, why it fails comes out. */
  program: (program: string, words: readonly string[]) => string | undefined;
  platform: string;
}

const bytes = new TextEncoder();
/** Bytes that are no text are given as text of one letter a byte, after a mark. */
const BYTES = "bytes:";
export const asText = (content: Uint8Array): string =>
  BYTES + Array.from(content, (byte) => String.fromCharCode(byte)).join("");

/** Bytes as text; those that are none letter for letter. */
function decoded(content: Uint8Array): string {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(content);
  } catch {
    return new TextDecoder("latin1").decode(content);
  }
}

/** Starts with these files (absolute paths under /w). */
export function memoryWorld(files: Record<string, string>, terminal = false): MemoryWorld {
  const kept = new Map(Object.entries(files));
  const folders = new Set<string>(["/", "/w"]);
  const said = { out: "", err: "" };
  const under = (folder: string): string[] =>
    [...kept.keys(), ...folders].filter((path) => path.startsWith(`${folder}/`));
  const world: MemoryWorld = {
    files: kept,
    said,
    fault: () => {},
    settings: {},
    program: () => "there is no program in memory",
    platform: "linux",
    env: (name) => world.settings[name],
    run: (program, words) => world.program(program, words),
    terminal,
    asset: (name) => {
      throw new Error(`no asset ${name} here`);
    },
    unique: "1",
    out: (text) => {
      said.out += text;
    },
    err: (text) => {
      said.err += text;
    },
    resolve: (path) => posix.resolve("/w", path),
    kind: (path) =>
      kept.has(path) ? "file" : folders.has(path) || under(path).length > 0 ? "folder" : undefined,
    list: (folder) =>
      [...new Set(under(folder).map((path) => path.slice(folder.length + 1).split("/")[0] as string))].sort(),
    read: (path) => {
      const text = kept.get(path);
      if (text === undefined) throw Object.assign(new Error("ENOENT"), { code: "ENOENT", path });
      return text.startsWith(BYTES)
        ? Uint8Array.from(text.slice(BYTES.length), (letter) => letter.charCodeAt(0))
        : bytes.encode(text);
    },
    real: (path) => path,
    size: (path) => world.read(path).length,
    write: (path, content) => {
      world.fault("write", path);
      kept.set(path, typeof content === "string" ? content : decoded(content));
    },
    writeNew: (path, content) => {
      if (kept.has(path)) return false;
      world.write(path, content);
      return true;
    },
    sync: (path) => world.fault("sync", path),
    isGone: (unique) => unique.startsWith("gone"),
    pause: (time) => world.fault("pause", String(time)),
    today: () => "2026-11-25",
    makeFolder: (path) => {
      world.fault("makeFolder", path);
      folders.add(path);
    },
    rename: (from, to) => {
      world.fault("rename", from);
      for (const path of [from, ...under(from)]) {
        const text = kept.get(path);
        if (text !== undefined) {
          kept.delete(path);
          kept.set(to + path.slice(from.length), text);
        }
        if (folders.delete(path)) folders.add(to + path.slice(from.length));
      }
    },
    remove: (path) => {
      for (const each of [path, ...under(path)]) {
        kept.delete(each);
        folders.delete(each);
      }
    },
  };
  return world;
}
