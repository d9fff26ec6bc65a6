/** How each format of a recipe becomes the next. A step once published is never changed: old recipes go through it for good. */
import type { Block } from "../node.ts";

/** From format `from` to the one after it. */
export interface Step {
  readonly from: number;
  /** What changed, in words for the maker. */
  readonly about: string;
  /**
   * Changes the measures in place. `moved` tells where a key went, by paths, so that messages still name the place in the file;
   * what stands under it goes along.
   */
  change(root: Block, moved: (from: string, to: string) => void): void;
}

/**
 * All steps, in order; the last leads to the format that this program reads (`FORMAT`). Format 1 is the first there is, so
 * there are none yet. With the first: raise FORMAT, keep recipes of the old format in tests/recipe/old, and say here what changed.
 */
export const STEPS: readonly Step[] = [];
