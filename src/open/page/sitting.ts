/** One sitting at a recipe: text, booklet and messages kept in step. What the file says besides is in versions.ts. */
import type { CompletionSource } from "@codemirror/autocomplete";
import { workingOf } from "../../page/live/working.ts";
import { button, make } from "../../page/make.ts";
import { put } from "../../recipe/edit/put.ts";
import type { Message } from "../../recipe/message.ts";
import type { Plan } from "../../solve/plan.ts";
import { BookletSide } from "./booklet-side.ts";
import { Editor } from "./editor.ts";
import { FieldText } from "./field-text.ts";
import { note } from "./journal.ts";
import { type Layout, layOut } from "./layout.ts";
import { lineEndsOf } from "./line-ends.ts";
import { fetchProject, listen, save } from "./link.ts";
import { listMessages } from "./messages.ts";
import { Photos } from "./photos.ts";
import type { Project } from "./project.ts";
import { said } from "./said.ts";
import { Saving, type State } from "./saving.ts";
import { Versions } from "./versions.ts";

/** All that can be said of a text is looked for when the typing rests. */
const REST = 300;

export class Sitting {
  private project: Project;
  private readonly layout: Layout;
  private readonly editor: Editor;
  private readonly booklet: BookletSide;
  private readonly saving: Saving;
  private readonly versions: Versions;
  private readonly photos = new Photos();
  private readonly fields = new FieldText();
  private waiting: number | undefined;
  private resting: ReturnType<typeof setTimeout> | undefined;
  /** The path of the field that is being typed in. */
  private field = "";

  constructor(
    root: HTMLElement,
    nonce: string,
    project: Project,
    complete: (plan: () => Plan | undefined) => readonly CompletionSource[],
  ) {
    this.project = project;
    this.layout = layOut(root, project.name, {
      undo: () => this.editor.undo(),
      redo: () => this.editor.redo(),
      download: () => this.download(),
    });
    this.booklet = new BookletSide((text) => this.layout.stale(text));
    const text = project.recipe?.text ?? "";
    this.editor = new Editor(this.layout.editor, nonce, text, lineEndsOf(text), {
      complete: complete(() => this.booklet.plan),
      changed: (isOurs) => this.changed(isOurs),
    });
    this.saving = new Saving(
      {
        send: save,
        after: (milliseconds, what) => {
          const timer = setTimeout(what, milliseconds);
          return () => clearTimeout(timer);
        },
        now: () => performance.now(),
        text: () => this.versions.text ?? this.editor.saved,
        show: (state) => this.showState(state),
        journal: (unsaved) => note(project.id, unsaved),
      },
      project.recipe,
    );
    this.versions = new Versions({
      nonce,
      layout: this.layout,
      editor: this.editor,
      saving: this.saving,
      project: () => this.project,
      notice: (words, ...more) => this.notice(words, ...more),
    });
    this.saving.typed();
    this.showState(this.saving.state);
  }

  /** Shows everything; from then on it goes by itself. */
  async begin(): Promise<void> {
    const { frame } = this.layout;
    if (
      frame.contentDocument?.readyState !== "complete" ||
      !frame.contentWindow?.location.pathname.endsWith("/booklet")
    )
      await new Promise((loaded) => frame.addEventListener("load", loaded, { once: true }));
    await this.loadPhotos();
    this.booklet.begin(frame, {
      change: (path, text, isDone) => this.change(path, text, isDone),
      working: (name) => this.booklet.plan && workingOf(this.booklet.plan, name),
      text: (path) => {
        const { text } = this.editor;
        return this.fields.of(text, path, this.booklet.written(text));
      },
      readIn: (units) => {
        this.booklet.desk.readIn(units);
        this.booklet.desk.markFrom(this.editor.text);
        this.make();
      },
      markFromHere: () => {
        this.booklet.desk.markFrom(this.editor.text);
        this.make();
      },
      undo: () => this.editor.undo(),
      redo: () => this.editor.redo(),
    });
    this.booklet.desk.markFrom(this.editor.text);
    this.make();
    this.rest(0);
    listen({
      recipe: (checksum) => void this.versions.fileChanged(checksum),
      beside: () => void this.besideChanged(),
      there: (is) => {
        if (is) this.saving.back();
        else this.saving.silent();
      },
    });
    addEventListener("pagehide", () => this.saving.flush());
    addEventListener("beforeunload", (event) => {
      if (!this.saving.isClean) event.preventDefault();
    });
    this.versions.offerKept();
    await this.versions.bringBack();
    this.editor.view.focus();
  }

  /** The text has changed: by a key, from a field, or from the file. */
  private changed(isOurs: boolean): void {
    if (isOurs) this.saving.typed();
    const text = this.editor.text;
    if (this.waiting === undefined && !this.booklet.desk.changesMeasures(text)) this.make();
    // The key is shown first; working everything out takes longer than a picture of the screen.
    else this.waiting ??= requestAnimationFrame(() => setTimeout(() => this.make()));
    this.rest(REST);
  }

  private make(): readonly Message[] {
    if (this.waiting !== undefined) cancelAnimationFrame(this.waiting);
    this.waiting = undefined;
    return this.booklet.make(this.editor.text);
  }

  /** Looks for everything that is to be said, when the typing rests. */
  private rest(milliseconds: number): void {
    clearTimeout(this.resting);
    this.resting = setTimeout(() => void this.examine(), milliseconds);
  }

  private async examine(): Promise<void> {
    const text = this.editor.text;
    if (await this.loadPhotos()) this.make();
    if (text !== this.editor.text) return;
    const { messages } = this.booklet.desk.examine(text, (path) => this.photos.find(path));
    this.editor.show(messages);
    const go = (message: Message): void => {
      this.layout.showText();
      this.editor.go(message);
    };
    this.editor.inSight(() => listMessages(this.layout.messages, messages, go));
  }

  /** Photographs that are asked for and not here yet; true when some came. */
  private async loadPhotos(): Promise<boolean> {
    const texts = [this.editor.text, ...this.project.templates.map(({ text }) => text)];
    const came = await this.photos.load(texts);
    this.booklet.desk.takeFiles(this.project, came ? this.photos.pictures : undefined);
    return came;
  }

  /** A measure is typed in the booklet: its characters of the text are changed, and no others. */
  private change(path: string, text: string, isDone: boolean): readonly Message[] {
    const value = text.trim();
    const now = this.editor.text;
    // A field that is emptied is perhaps only typed anew; once it is left empty its key goes, if it may.
    const edit = put(now, path, value === "" && isDone && this.fields.mayGo(path) ? null : value);
    if (edit && !(value === "" && !this.fields.isThere(now, path))) {
      this.editor.edit(edit, path !== this.field || isDone);
      this.field = path;
    } else if (!edit && this.fields.of(now, path).trim() !== value)
      this.notice(
        "The text cannot take this in while its measures cannot be read: put right what its messages say.",
      );
    if (isDone) this.field = "";
    return this.waiting === undefined ? this.booklet.make(this.editor.text) : this.make();
  }

  private async besideChanged(): Promise<void> {
    const project = await fetchProject();
    if (!project) return;
    this.project = project;
    this.photos.forget();
    await this.loadPhotos();
    this.make();
    this.rest(0);
  }

  private showState(state: State): void {
    const { shown } = this.project;
    this.layout.say(...said(state, shown));
    if (state.is === "conflict") this.versions.open(state.theirs, state.kept, this.editor.saved);
  }

  private notice(words: string, ...more: HTMLElement[]): void {
    const line: HTMLElement = make(
      document,
      "div",
      { class: "notice", role: "status" },
      make(document, "p", {}, words),
      ...more,
      button(document, "Close", () => line.remove()),
    );
    this.layout.notices.replaceChildren(line);
  }

  /** The text as a file of the browser's, whatever has become of the server. */
  private download(): void {
    const file = new Blob([this.versions.text ?? this.editor.saved], { type: "text/markdown" });
    const link = make(document, "a", { href: URL.createObjectURL(file), download: "recipe.md" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }
}
