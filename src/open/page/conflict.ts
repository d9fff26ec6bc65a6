/** Two versions of one recipe, side by side, and the ways out: the file's, or the maker's own with what she takes over from the other. */
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { goToNextChunk, MergeView, unifiedMergeView } from "@codemirror/merge";
import { EditorState } from "@codemirror/state";
import { EditorView, keymap } from "@codemirror/view";
import { button, make } from "../../page/make.ts";
import { common } from "./editor.ts";

export interface TwoVersions {
  /** What stands in the file; undefined where the file is gone. */
  readonly theirs: string | undefined;
  readonly mine: string;
  /** The file that keeps the maker's own. */
  readonly kept: string;
  /** The recipe's path. */
  readonly shown: string;
}

export interface WaysOut {
  /** The maker's own was changed here. */
  typed(mine: string): void;
  takeTheirs(): void;
  /** Her own as it stands now goes into the file. */
  keepMine(mine: string): void;
}

/** Narrower windows show one text with the differences in it. */
const NARROW = "(max-width: 759px)";

export class Conflict {
  readonly section: HTMLElement;
  private readonly mine: EditorView;
  private readonly close: () => void;

  constructor(versions: TwoVersions, nonce: string, ways: WaysOut) {
    const { theirs, mine, kept, shown } = versions;
    const title = make(
      document,
      "h2",
      { id: "conflict-title", tabindex: "-1" },
      "This recipe has two versions",
    );
    const found =
      theirs === undefined
        ? `${shown} is no longer there.`
        : `${shown} was changed elsewhere: by another program or in another window.`;
    const next = button(document, "Next difference", () => {
      this.mine.focus();
      goToNextChunk(this.mine);
    });
    const take = button(document, "Take the file’s", () => ways.takeTheirs());
    const keep = button(
      document,
      theirs === undefined ? "Put mine back" : "Save mine as it stands here",
      () => ways.keepMine(this.text),
    );
    const isNarrow = matchMedia(NARROW).matches;
    const where = isNarrow
      ? "What is struck out stands in the file, what is underlined in yours."
      : "The file’s stands on the left, yours on the right, where you can go on writing; the arrows between take a passage over.";
    const frame = make(document, "div", { class: "versions" });
    this.section = make(
      document,
      "section",
      { class: "conflict", "aria-labelledby": "conflict-title" },
      title,
      make(
        document,
        "p",
        {},
        `${found} Nothing was written over: yours is kept in the file ${kept} beside it. ${theirs === undefined ? "" : where}`,
      ),
      frame,
      make(document, "p", { class: "ways-out" }, ...(theirs === undefined ? [] : [next, take]), keep),
      make(
        document,
        "p",
        { class: "quiet" },
        "Whichever you choose, the other stays in a file beside the recipe, and can be undone here.",
      ),
    );
    const typing = EditorView.updateListener.of(({ docChanged }) => {
      if (docChanged) ways.typed(this.text);
    });
    const own = [
      common(nonce, "Your version"),
      history(),
      keymap.of([...historyKeymap, ...defaultKeymap]),
      typing,
    ];
    if (theirs === undefined || isNarrow) {
      const view = new EditorView({
        parent: frame,
        state: EditorState.create({
          doc: mine,
          extensions: [own, ...(theirs === undefined ? [] : [unifiedMergeView({ original: theirs })])],
        }),
      });
      this.mine = view;
      this.close = () => view.destroy();
    } else {
      const heads = make(
        document,
        "div",
        { class: "heads" },
        make(document, "h3", {}, "In the file"),
        make(document, "h3", {}, "Yours"),
      );
      frame.append(heads);
      const view = new MergeView({
        parent: frame,
        a: {
          doc: theirs,
          extensions: [
            common(nonce, "The file’s version, to be read only"),
            EditorState.readOnly.of(true),
            keymap.of(defaultKeymap),
          ],
        },
        b: { doc: mine, extensions: own },
        revertControls: "a-to-b",
        renderRevertControl: () =>
          make(
            document,
            "button",
            { type: "button", class: "take-over", "aria-label": "take this passage over" },
            "→",
          ),
      });
      this.mine = view.b;
      this.close = () => view.destroy();
    }
  }

  get text(): string {
    return this.mine.state.doc.toString();
  }

  /** Takes the view away. */
  end(): void {
    this.close();
    this.section.remove();
  }
}
