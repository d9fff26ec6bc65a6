/** One sitting at a recipe: text, booklet, file and messages kept in step. */
import type { CompletionSource } from "@codemirror/autocomplete";
import { workingOf } from "../../page/live/working.ts";
import { button, make } from "../../page/make.ts";
import { put } from "../../recipe/edit/put.ts";
import type { Message } from "../../recipe/message.ts";
import type { Plan } from "../../solve/plan.ts";
import { BookletSide } from "./booklet-side.ts";
import { Conflict } from "./conflict.ts";
import { Editor } from "./editor.ts";
import { FieldText } from "./field-text.ts";
import { note, takeNoted } from "./journal.ts";
import { type Layout, layOut } from "./layout.ts";
import { lineEndsOf } from "./line-ends.ts";
import { fetchKept, fetchProject, fetchRecipe, keep, listen, save } from "./link.ts";
import { listMessages } from "./messages.ts";
import { Photos } from "./photos.ts";
import type { Project, Version } from "./project.ts";
import { said } from "./said.ts";
import { Saving, type State } from "./saving.ts";

/** All that can be said of a text is looked for when the typing rests. */
const REST = 300;

export class Sitting {
  private readonly nonce: string;
  private project: Project;
  private readonly layout: Layout;
  private readonly editor: Editor;
  private readonly booklet: BookletSide;
  private readonly saving: Saving;
  private readonly photos = new Photos();
  private readonly fields = new FieldText();
  private conflict: Conflict | undefined;
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
    this.nonce = nonce;
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
        text: () => this.conflict?.text ?? this.editor.saved,
        show: (state) => this.showState(state),
        journal: (unsaved) => note(project.id, unsaved),
      },
      project.recipe,
    );
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
      recipe: (checksum) => void this.fileChanged(checksum),
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
    this.offerKept();
    await this.bringBack();
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

  private async fileChanged(checksum: string): Promise<void> {
    if (checksum === this.saving.checksum) return;
    if (!this.saving.isClean) {
      // The save that is under way finds the other version, and keeps both.
      if (this.saving.state.is !== "conflict") this.saving.flush();
      return;
    }
    const answer = await fetchRecipe();
    if (!answer || !this.saving.isClean || answer.recipe?.checksum === this.saving.checksum) return;
    if (answer.recipe) this.takeFile(answer.recipe);
    else await this.gone();
  }

  private takeFile(version: Version): void {
    this.editor.lineEnds = lineEndsOf(version.text);
    this.editor.take(version.text);
    this.saving.took(version);
    this.notice("The recipe was changed elsewhere; this is the file’s text now. Undo brings yours back.");
  }

  /** The file was taken away: what was in it is kept. */
  private async gone(): Promise<void> {
    const kept = await keep(this.editor.saved);
    if (kept !== undefined) this.saving.conflict(undefined, kept);
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
    if (state.is === "conflict") this.open(state.theirs, state.kept, this.editor.saved);
  }

  /** Two versions, side by side. */
  private open(theirs: Version | undefined, kept: string, mine: string): void {
    this.conflict?.end();
    const ends = lineEndsOf(mine);
    let timer: ReturnType<typeof setTimeout> | undefined;
    let own = kept;
    const done = (): void => {
      clearTimeout(timer);
      this.conflict?.end();
      this.conflict = undefined;
      this.layout.page.classList.remove("has-conflict");
      this.editor.view.focus();
    };
    this.conflict = new Conflict(
      {
        theirs: theirs && lineEndsOf(theirs.text).read(theirs.text),
        mine: ends.read(mine),
        kept,
        shown: this.project.shown,
      },
      this.nonce,
      {
        typed: (text) => {
          clearTimeout(timer);
          timer = setTimeout(async () => {
            own = (await keep(ends.written(text), own)) ?? own;
          }, REST);
        },
        takeTheirs: () => {
          done();
          if (theirs) void this.takeTheirs(theirs);
        },
        keepMine: (text) => {
          done();
          void this.keepMine(theirs, own, text);
        },
      },
    );
    this.layout.page.classList.add("has-conflict");
    this.layout.notices.after(this.conflict.section);
    this.conflict.section.querySelector<HTMLElement>("h2")?.focus();
  }

  /** The file's, as it is by now. */
  private async takeTheirs(theirs: Version): Promise<void> {
    const answer = await fetchRecipe();
    this.takeFile(answer?.recipe ?? theirs);
  }

  /** The maker's own goes into the file; the file's is kept beside it first. */
  private async keepMine(theirs: Version | undefined, kept: string, text: string): Promise<void> {
    if (theirs) {
      const name = await keep(theirs.text);
      if (name !== undefined) this.notice(`The file’s version is kept in ${name}.`);
    }
    this.editor.take(text);
    await this.saving.settle(theirs, kept);
  }

  /** What an earlier window could not save comes back beside what the file says. */
  private async bringBack(): Promise<void> {
    for (const { text } of takeNoted(this.project.id)) {
      if (text === this.editor.saved || this.conflict) continue;
      const kept = await keep(text);
      if (kept === undefined) continue;
      this.saving.conflict({ text: this.editor.saved, checksum: this.saving.checksum }, kept);
      this.open({ text: this.editor.saved, checksum: this.saving.checksum }, kept, text);
    }
  }

  /** Versions that were kept before, each to be looked at beside the file's. */
  private offerKept(): void {
    const { kept } = this.project;
    const [newest] = kept.slice(-1);
    if (newest === undefined) return;
    const words =
      kept.length === 1
        ? `An earlier version is kept beside the recipe: ${newest}.`
        : `${kept.length} earlier versions are kept beside the recipe, the last as ${newest}.`;
    const look = button(document, "Compare", async () => {
      const version = await fetchKept(newest);
      if (!version || this.conflict) return;
      const mine = this.editor.saved;
      this.saving.conflict({ text: mine, checksum: this.saving.checksum }, newest);
      this.open({ text: mine, checksum: this.saving.checksum }, newest, version.text);
    });
    this.notice(words, look);
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
    const file = new Blob([this.conflict?.text ?? this.editor.saved], { type: "text/markdown" });
    const link = make(document, "a", { href: URL.createObjectURL(file), download: "recipe.md" });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  }
}
