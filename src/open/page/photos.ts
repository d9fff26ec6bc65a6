/** Photographs that the recipe asks for, fetched once. */
import type { FoundFile } from "../../booklet/notebook/photographs.ts";
import type { Pictures } from "../../booklet/notebook/picture.ts";
import { fetchPhotograph } from "./link.ts";

/** Paths that a text may ask for; what is none is found missing. */
const pathsIn = (text: string): Set<string> =>
  new Set(text.match(/\bphotos\/[\w.-]+\.(?:png|jpe?g|webp)\b/gi) ?? []);

export class Photos {
  private found = new Map<string, FoundFile>();
  private shown = new Map<string, string>();

  /** Fetches what is asked for and not here yet; says whether anything came. */
  async load(texts: readonly string[]): Promise<boolean> {
    const missing = [...pathsIn(texts.join("\n"))].filter((path) => !this.found.has(path));
    await Promise.all(
      missing.map(async (path) => {
        const found = await fetchPhotograph(path);
        this.found.set(path, found);
        if (found instanceof Uint8Array)
          this.shown.set(path, URL.createObjectURL(new Blob([found as Uint8Array<ArrayBuffer>])));
      }),
    );
    return missing.length > 0;
  }

  /** They may have changed on the disk. */
  forget(): void {
    for (const address of this.shown.values()) URL.revokeObjectURL(address);
    this.found = new Map();
    this.shown = new Map();
  }

  get pictures(): Pictures {
    return new Map(this.shown);
  }

  find(path: string): FoundFile {
    return this.found.get(path) ?? "missing";
  }
}
