/** What the server tells of a project. */
import type { Beside } from "../../booklet/examine.ts";

export interface Version {
  readonly text: string;
  readonly checksum: string;
}

export interface Project extends Beside {
  readonly id: string;
  /** The folder's name. */
  readonly name: string;
  /** The recipe's path as it was named on the command line. */
  readonly shown: string;
  readonly recipe: Version | null;
  /** Names of versions that are kept beside the recipe. */
  readonly kept: readonly string[];
}

/** How a save ended. */
export type Answer =
  | { readonly is: "saved"; readonly checksum: string }
  | { readonly is: "changed-elsewhere"; readonly theirs?: Version; readonly kept: string }
  /** The server is not there. */
  | { readonly is: "away" }
  /** The server was started anew: this page's address is no longer known. */
  | { readonly is: "stale" }
  | { readonly is: "refused"; readonly why: string };
