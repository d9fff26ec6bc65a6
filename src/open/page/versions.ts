/** What the file says where it is not what is typed here: changes from elsewhere, two versions side by side, older ones that were kept. */
import { button } from "../../page/make.ts";
import { Conflict } from "./conflict.ts";
import type { Editor } from "./editor.ts";
import { takeNoted } from "./journal.ts";
import type { Layout } from "./layout.ts";
import { lineEndsOf } from "./line-ends.ts";
import { fetchKept, fetchRecipe, keep } from "./link.ts";
import type { Project, Version } from "./project.ts";
import type { Saving } from "./saving.ts";

/** Another's text is kept when the typing in it rests. */
const REST = 300;

/** The sitting that the versions belong to. */
interface Of {
  readonly nonce: string;
  readonly layout: Layout;
  readonly editor: Editor;
  readonly saving: Saving;
  readonly project: () => Project;
  readonly notice: (words: string, ...more: HTMLElement[]) => void;
}

export class Versions {
  private readonly of: Of;
  private conflict: Conflict | undefined;

  constructor(of: Of) {
    this.of = of;
  }

  /** The text beside the file's while both are shown; else undefined. */
  get text(): string | undefined {
    return this.conflict?.text;
  }

  /** The file has another checksum now. */
  async fileChanged(checksum: string): Promise<void> {
    if (checksum === this.of.saving.checksum) return;
    if (!this.of.saving.isClean) {
      // The save that is under way finds the other version, and keeps both.
      if (this.of.saving.state.is !== "conflict") this.of.saving.flush();
      return;
    }
    const answer = await fetchRecipe();
    if (!answer || !this.of.saving.isClean || answer.recipe?.checksum === this.of.saving.checksum) return;
    if (answer.recipe) this.takeFile(answer.recipe);
    else await this.gone();
  }

  private takeFile(version: Version): void {
    this.of.editor.lineEnds = lineEndsOf(version.text);
    this.of.editor.take(version.text);
    this.of.saving.took(version);
    this.of.notice("The recipe was changed elsewhere; this is the file’s text now. Undo brings yours back.");
  }

  /** The file was taken away: what was in it is kept. */
  private async gone(): Promise<void> {
    const kept = await keep(this.of.editor.saved);
    if (kept !== undefined) this.of.saving.conflict(undefined, kept);
  }

  /** Two versions, side by side. */
  open(theirs: Version | undefined, kept: string, mine: string): void {
    this.conflict?.end();
    const ends = lineEndsOf(mine);
    let timer: ReturnType<typeof setTimeout> | undefined;
    let own = kept;
    const done = (): void => {
      clearTimeout(timer);
      this.conflict?.end();
      this.conflict = undefined;
      this.of.layout.page.classList.remove("has-conflict");
      this.of.editor.view.focus();
    };
    this.conflict = new Conflict(
      {
        theirs: theirs && lineEndsOf(theirs.text).read(theirs.text),
        mine: ends.read(mine),
        kept,
        shown: this.of.project().shown,
      },
      this.of.nonce,
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
    this.of.layout.page.classList.add("has-conflict");
    this.of.layout.notices.after(this.conflict.section);
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
      if (name !== undefined) this.of.notice(`The file’s version is kept in ${name}.`);
    }
    this.of.editor.take(text);
    await this.of.saving.settle(theirs, kept);
  }

  /** What an earlier window could not save comes back beside what the file says. */
  async bringBack(): Promise<void> {
    for (const { text } of takeNoted(this.of.project().id)) {
      if (text === this.of.editor.saved || this.conflict) continue;
      const kept = await keep(text);
      if (kept === undefined) continue;
      this.of.saving.conflict({ text: this.of.editor.saved, checksum: this.of.saving.checksum }, kept);
      this.open({ text: this.of.editor.saved, checksum: this.of.saving.checksum }, kept, text);
    }
  }

  /** Versions that were kept before, each to be looked at beside the file's. */
  offerKept(): void {
    const { kept } = this.of.project();
    const [newest] = kept.slice(-1);
    if (newest === undefined) return;
    const words =
      kept.length === 1
        ? `An earlier version is kept beside the recipe: ${newest}.`
        : `${kept.length} earlier versions are kept beside the recipe, the last as ${newest}.`;
    const look = button(document, "Compare", async () => {
      const version = await fetchKept(newest);
      if (!version || this.conflict) return;
      const mine = this.of.editor.saved;
      this.of.saving.conflict({ text: mine, checksum: this.of.saving.checksum }, newest);
      this.open({ text: mine, checksum: this.of.saving.checksum }, newest, version.text);
    });
    this.of.notice(words, look);
  }
}
