/**
 * The program's file with what V8 made of it when it was built (`program.cache` beside it): a command starts without
 * compiling it all again. Another Node, or a file of another length, refuses the cache and compiles as ever.
 */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname } from "node:path";
import { Script } from "node:vm";

const cacheOf = (file: string): string => file.replace(/\.cjs$/, ".cache");

function started(file: string, cachedData?: Buffer): { script: Script; exports: object } {
  const source = `(function (exports, require, module, __filename, __dirname) {${readFileSync(file, "utf8")}\n})`;
  const script = new Script(source, { filename: file, ...(cachedData ? { cachedData } : {}) });
  const module = { exports: {} };
  script.runInThisContext()(module.exports, createRequire(file), module, file, dirname(file));
  return { script, exports: module.exports };
}

/** What a CommonJS file of ours exports, as `require` would give it, from its cache where there is one that is taken. */
export function load(file: string): object {
  const cache = cacheOf(file);
  return started(file, existsSync(cache) ? readFileSync(cache) : undefined).exports;
}

/**
 * Loads a file without its cache; the second part writes the cache with every function that has run by then.
 *
 * @returns what the file exports, and what keeps the cache
 */
export function loadToKeep(file: string): { exports: object; keep: () => void } {
  const { script, exports } = started(file);
  return { exports, keep: () => writeFileSync(cacheOf(file), script.createCachedData()) };
}
