/** The plain tree that front matter is read into: texts, lists, and blocks of keys. */

export type Node = string | readonly Node[] | Block;
/** Has no prototype, so that no key can reach one. */
export interface Block {
  [key: string]: Node;
}

export const emptyBlock = (): Block => Object.create(null) as Block;

/**
 * A path one step further in: `wearer`, `waist` -> `wearer.waist`. A key that holds a dot itself is put in quotes, so
 * that it is no other key's path.
 */
export function within(path: string, key: string | number): string {
  const step = typeof key === "string" && key.includes(".") ? JSON.stringify(key) : `${key}`;
  return path === "" ? step : `${path}.${step}`;
}
