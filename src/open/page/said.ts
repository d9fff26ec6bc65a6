/** How the text stands to the file, as the maker reads it. */
import type { State } from "./saving.ts";

/** How the text stands to the file, in words; and is that bad? */
export function said(state: State, shown: string): [words: string, isBad: boolean] {
  switch (state.is) {
    case "saved":
      return [`Saved in ${shown}`, false];
    case "typing":
      return ["Saving …", false];
    case "away":
      return [
        "Not saved: plainwork open has stopped or does not answer. What you type is kept in this browser and saved when it answers again. Save a copy to be sure.",
        true,
      ];
    case "stale":
      return [
        "Not saved: plainwork open was started anew. Save a copy, then open the link that it printed; what you typed here is offered there.",
        true,
      ];
    case "refused":
      return [`Not saved: ${state.why}`, true];
    case "conflict":
      return ["Two versions: choose below", true];
  }
}
