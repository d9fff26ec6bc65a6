/** The recipe as text. */
import { autocompletion, type CompletionSource, completionKeymap } from "@codemirror/autocomplete";
import { defaultKeymap, history, historyKeymap, isolateHistory, redo, undo } from "@codemirror/commands";
import { bracketMatching } from "@codemirror/language";
import {
  type Diagnostic,
  lintGutter,
  lintKeymap,
  previousDiagnostic,
  setDiagnostics,
} from "@codemirror/lint";
import { highlightSelectionMatches, searchKeymap } from "@codemirror/search";
import {
  Annotation,
  type ChangeSpec,
  EditorSelection,
  EditorState,
  type Extension,
  type Text,
  Transaction,
} from "@codemirror/state";
import {
  drawSelection,
  EditorView,
  highlightActiveLine,
  highlightActiveLineGutter,
  highlightSpecialChars,
  keymap,
  lineNumbers,
} from "@codemirror/view";
import { faultWords } from "../../page/fault-words.ts";
import type { Edit } from "../../recipe/edit/entry.ts";
import type { Message } from "../../recipe/message.ts";
import { RECIPE } from "./desk.ts";
import { difference } from "./difference.ts";
import { recipeLanguage } from "./language.ts";
import type { LineEnds } from "./line-ends.ts";

/** A change that came from the file, not from the maker's hand. */
const fromFile = Annotation.define<true>();

export interface EditorWays {
  /** The text has changed; `isOurs` is false where the file's own text was taken over. */
  changed(isOurs: boolean): void;
  readonly complete: readonly CompletionSource[];
}

/** What every editor of the page has. */
export const common = (nonce: string, label: string): Extension => [
  EditorView.cspNonce.of(nonce),
  EditorState.lineSeparator.of("\n"),
  EditorView.lineWrapping,
  lineNumbers(),
  highlightSpecialChars(),
  drawSelection(),
  recipeLanguage(),
  EditorView.contentAttributes.of({ "aria-label": label, tabindex: "0" }),
];

export class Editor {
  /** The text as it was last put together, out of its lines: many ask for it at every key. */
  private read: { readonly doc: Text; readonly text: string } | undefined;
  readonly view: EditorView;
  lineEnds: LineEnds;

  constructor(parent: Element, nonce: string, text: string, lineEnds: LineEnds, ways: EditorWays) {
    this.lineEnds = lineEnds;
    this.view = new EditorView({
      parent,
      state: EditorState.create({
        doc: lineEnds.read(text),
        extensions: [
          common(nonce, "The recipe’s text"),
          history(),
          bracketMatching(),
          highlightActiveLine(),
          highlightActiveLineGutter(),
          highlightSelectionMatches(),
          lintGutter(),
          // Room below for what is offered at the cursor.
          EditorView.scrollMargins.of(() => ({ bottom: 90 })),
          autocompletion({ override: [...ways.complete], icons: false }),
          keymap.of([
            { key: "Shift-F8", run: previousDiagnostic },
            ...completionKeymap,
            ...lintKeymap,
            ...searchKeymap,
            ...historyKeymap,
            ...defaultKeymap,
          ]),
          EditorView.updateListener.of(({ docChanged, transactions }) => {
            if (docChanged) ways.changed(!transactions.every((one) => one.annotation(fromFile)));
          }),
        ],
      }),
    });
  }

  /** The text with plain line ends, as it is read. */
  get text(): string {
    const { doc } = this.view.state;
    if (this.read?.doc !== doc) this.read = { doc, text: doc.toString() };
    return this.read.text;
  }

  /** The text as it is to be saved. */
  get saved(): string {
    return this.lineEnds.written(this.text);
  }

  /** Takes over the file's text: only what differs is changed, so that the cursor stays; it can be undone. */
  take(text: string): void {
    const change = difference(this.text, this.lineEnds.read(text));
    if (!change) return;
    this.view.dispatch({
      changes: change,
      annotations: [fromFile.of(true), isolateHistory.of("full"), Transaction.userEvent.of("input.file")],
    });
  }

  /** An edit that came from the booklet. Edits of one field one after the other are undone together. */
  edit({ from, to, insert }: Edit, isNew: boolean): void {
    const changes: ChangeSpec = { from, to, insert };
    this.view.dispatch({
      changes,
      annotations: [
        ...(isNew ? [isolateHistory.of("before")] : []),
        Transaction.userEvent.of("input.type.field"),
      ],
    });
  }

  undo(): void {
    undo(this.view);
  }

  redo(): void {
    redo(this.view);
  }

  /** Does something that changes how much of the text is seen; the cursor stays in sight if it was. */
  inSight(what: () => void): void {
    const { view } = this;
    const { head } = view.state.selection.main;
    const at = view.coordsAtPos(head);
    const seen = view.scrollDOM.getBoundingClientRect();
    const isSeen = at !== null && at.top >= seen.top && at.bottom <= seen.bottom;
    what();
    if (isSeen) view.dispatch({ effects: EditorView.scrollIntoView(head, { y: "nearest", yMargin: 24 }) });
  }

  /** Goes to a message's place. */
  go(message: Message): void {
    const { from } = this.spanOf(message);
    this.view.dispatch({ selection: EditorSelection.cursor(from), scrollIntoView: true });
    this.view.focus();
  }

  /** Messages in the margin; those of other files are not the editor's. */
  show(messages: readonly Message[]): void {
    const diagnostics = messages
      .filter(({ place }) => place?.file === RECIPE)
      .map((message): Diagnostic => {
        const severity = message.level === "note" ? "info" : message.level;
        return { ...this.spanOf(message), severity, message: faultWords(message) };
      })
      .sort((a, b) => a.from - b.from);
    this.view.dispatch(setDiagnostics(this.view.state, diagnostics));
  }

  private spanOf({ place }: Message): { from: number; to: number } {
    const { doc } = this.view.state;
    if (!place) return { from: 0, to: 0 };
    const line = doc.line(Math.max(1, Math.min(place.line, doc.lines)));
    const from = Math.min(line.from + place.column - 1, line.to);
    return { from, to: Math.min(from + place.length, line.to) };
  }
}
