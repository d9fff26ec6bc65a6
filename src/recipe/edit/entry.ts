/** An edit of a text, and what the parser found on the way to it. */
import type { Node, Pair, YAMLMap } from "yaml";

/** Characters from `from` to `to` of the text are to become `insert`. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly insert: string;
}

/** A key with its value as the parser found them. */
export type Entry = Pair<Node, Node | null>;

/** A block of keys on the way to a path. */
export interface Step {
  readonly map: YAMLMap;
  /** The path of the block itself, "" at the top. */
  readonly path: string;
  /** The entry of the block that leads on, where there is one. */
  readonly entry: Entry | undefined;
}
