/** The front matter as a plain tree with the place of every key and value: what a YAML file or a page's fields are read into. */
import type { Message, Place } from "./message.ts";
import type { Block } from "./node.ts";

export interface Places {
  readonly key: Place;
  readonly value: Place;
  /** The place from one character of a text's value to its end. */
  readonly from?: (at: number) => Place;
}

export interface Tree {
  /** Undefined when the front matter as a whole cannot be used: not a block of keys, or far too much. */
  readonly root: Block | undefined;
  /** Every key that is written, by path, whether its value can be used or not. */
  readonly places: ReadonlyMap<string, Places>;
  readonly messages: readonly Message[];
  /** The first line that is not sound YAML; what stands below it may be read wrongly. */
  readonly brokenFrom: number | undefined;
}
