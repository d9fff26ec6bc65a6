/** What could not be saved is kept in this browser until it is; each window keeps its own. */

export interface Unsaved {
  readonly text: string;
  /** Checksum of the version it was made of. */
  readonly base: string;
}

const prefix = (id: string): string => `plainwork-open:${id}:`;
const WINDOW = crypto.randomUUID();

/** Keeps a text, or forgets it; that a browser keeps nothing is no fault here, as the page holds it. */
export function note(id: string, unsaved: Unsaved | null): void {
  try {
    if (unsaved) localStorage.setItem(prefix(id) + WINDOW, JSON.stringify(unsaved));
    else localStorage.removeItem(prefix(id) + WINDOW);
  } catch {
    // Storage that is full or forbidden.
  }
}

/** What earlier windows of the same recipe could not save; they forget it. */
export function takeNoted(id: string): Unsaved[] {
  try {
    const keys = Object.keys(localStorage).filter((key) => key.startsWith(prefix(id)));
    const found = keys.flatMap((key): Unsaved[] => {
      const data: unknown = JSON.parse(localStorage.getItem(key) ?? "null");
      const { text, base } = (data ?? {}) as Record<string, unknown>;
      return typeof text === "string" && typeof base === "string" ? [{ text, base }] : [];
    });
    for (const key of keys) localStorage.removeItem(key);
    return found;
  } catch {
    return [];
  }
}
