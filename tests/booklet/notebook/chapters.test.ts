/** Chapters and notes in the maker's order, and the cautions that cannot be written away. */
import { describe, expect, it } from "vitest";
import { CHAPTERS, chaptersOf } from "../../../src/booklet/chapters.ts";
import { carriesCaution } from "../../../src/booklet/notebook/caution-words.ts";
import { standardTemplate } from "../../../src/booklet/template/chapter.ts";
import { planOf } from "../../recipes.ts";
import { brief, pageOf, tryNotebook } from "./try.ts";

const names = (body: string): string[] => tryNotebook(body).sections.map(({ name }) => name);
const standard = [...chaptersOf(planOf())];

describe("a notebook's sections", () => {
  it("a blank body is the standard booklet", () => {
    expect(names("")).toEqual(standard);
    expect(names("\n  \n")).toEqual(standard);
  });

  it("stand in the order they are written in, notes among them", () => {
    expect(names("Hello.\n\n{{> cautions}}\n\n## One\n\nx\n\n## Two\n\n{{> hem}}\n\nBye.\n")).toEqual([
      "note-1",
      "cautions",
      "note-2",
      "note-3",
      "hem",
      "note-4",
    ]);
  });

  it("the rest stands where it is put, without what is named before or after it", () => {
    const found = names("{{> keeping}}\n{{> the-rest}}\n{{> cautions}}\n");
    expect(found[0]).toBe("keeping");
    expect(found.at(-1)).toBe("cautions");
    expect(found.slice(1, -1)).toEqual(standard.filter((name) => name !== "keeping" && name !== "cautions"));
  });

  it("a heading in a block of code begins none; an underlined one is an error", () => {
    expect(names("{{> cautions}}\n\n## Title\n\nx\n\n```\n## not a title\n```\n")).toEqual([
      "cautions",
      "note-1",
    ]);
    expect(brief(tryNotebook("Title\n-----\n\nx\n").messages)).toEqual(["2:1 heading"]);
    expect(brief(tryNotebook("{{> the-rest}}\n\nText.\n\n-----\n\n| a |\n|---|\n| b |\n").messages)).toEqual(
      [],
    );
  });

  it("a heading may depend on the garment", () => {
    const body =
      "{{> cautions}}\n{{#if is.gauged}}\n## Gauged\n\nx\n{{else}}\n## Not\n{{/if}}\n## Both\n\n{{#if is.hoop}}y{{/if}}\n{{> hem}}\n";
    const { sections } = tryNotebook(body);
    expect(sections.map(({ name, markdown }) => `${name} ${markdown.split("\n")[0]}`)).toEqual([
      expect.stringContaining("cautions"),
      "note-1 ## Gauged",
      "note-2 ## Both",
      expect.stringContaining("hem"),
    ]);
  });

  it("a chapter may depend on the garment", () => {
    const body = "{{> cautions}}\n{{#if is.gauged}}\n{{> gauging}}\n{{else}}\n{{> pleats}}\n{{/if}}\n";
    expect(names(body)).toEqual(["cautions", "gauging"]);
    const pleated = planOf({ fullness: { method: "pleated" } });
    expect(tryNotebook(body, pleated).sections.map(({ name }) => name)).toEqual(["cautions", "pleats"]);
  });

  it.each([
    ["{{> hem}}\n\n{{> hem}}\n", ["3:1 chapter-twice"]],
    ["{{> cautions}}\n{{> tucks}}\n{{> the-rest}}", ["2:1 chapter-does-not-apply"]],
    ["{{> gauging}}\n{{> hem}}\n{{> the-rest}}", ["1:1 chapter-order"]],
    ["{{> cutting}}\n{{> whipping}}\n{{> the-rest}}", ["2:1 chapter-order"]],
    ["{{> cautions}} and {{> hem}}\n", ["1:1 chapter-place", "1:20 chapter-place"]],
    ["- {{> hem}}\n", ["1:3 chapter-place"]],
    ["```\n{{> hem}}\n```\n", ["2:1 chapter-place"]],
    ["{{> gaugin}}\n", ["1:5 unknown-chapter"]],
    ["{{> the-rest}}\n{{> the-rest}}\n", ["2:1 chapter-twice"]],
    ["\n\nWords only.\n", ["3:1 no-chapters"]],
    ["{{#each sections}}\n{{> hem}}\n{{/each}}\n", ["2:1 chapter-place"]],
    ['Text {{figure "hem"}}\n', ["1:6 figure-place"]],
    ["[{{skirt.round}}]({{#if is.gauged}}#hem{{else}}#band{{/if}})\n\n{{> the-rest}}\n", ["1:1 crossed"]],
  ] as [string, string[]][])("%j: %j", (body, wanted) => {
    expect(brief(tryNotebook(body).messages).filter((text, i, all) => all.indexOf(text) === i)).toEqual(
      expect.arrayContaining(wanted),
    );
  });

  it("chapters of the work in its order, and others anywhere, are no matter", () => {
    for (const body of ["{{> workings}}\n{{> the-rest}}", "{{> seams}}\n{{> gauging}}\n{{> closing}}"])
      expect(brief(tryNotebook(body).messages).join()).not.toContain("chapter-order");
  });

  it("left-out cautions come first all the same, and it is said which chapters are left out with theirs", () => {
    const found = tryNotebook("{{> hem}}\n");
    expect(found.sections.map(({ name }) => name)).toEqual(["cautions", "hem"]);
    const [message] = found.messages;
    expect(message?.level).toBe("warning");
    for (const name of standard) {
      const cautious = name === "cautions" || carriesCaution(standardTemplate(name));
      expect(message?.text.includes(name), name).toBe(cautious && name !== "hem");
    }
    expect(tryNotebook("{{> the-rest}}").messages).toEqual([]);
    expect(tryNotebook("Words.").sections.map(({ name }) => name)).toEqual(["cautions", "note-1"]);
  });

  it("chapters with a signal word before a step or as a heading are those that carry cautions", () => {
    const cautious = CHAPTERS.filter((name) => carriesCaution(standardTemplate(name)));
    expect(cautious).toEqual(expect.arrayContaining(["cautions", "gauging", "keeping"]));
    expect(cautious).not.toContain("workings");
  });

  it("a drawing that stands twice has its ids once", () => {
    const page = pageOf(tryNotebook('{{figure "hem"}}\n\n{{> the-rest}}\n\n{{figure "hem"}}\n'));
    const ids = [...page.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
    for (const [, id] of page.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(id);
    expect(page.match(/<figure id="figure-hem/g)).toHaveLength(3);
  });

  it("notes are named by their heading, or in words, and only titled ones are listed", () => {
    const page = pageOf(tryNotebook("Hello.\n\n## A *note* on {{skirt.round}}\n\n{{> the-rest}}"));
    expect(page).toContain('<section id="note-1" class="chapter note" aria-label="A note">');
    expect(page).toContain('<section id="note-2" class="chapter note" aria-labelledby="note-2-title">');
    expect(page).not.toContain('<a href="#note-1">');
    expect(page).toMatch(/<a href="#note-2">A note on [^<]+<\/a>/);
  });
});

describe("wordings of the project's own", () => {
  const own = (text: string, name = "hem", body = "") =>
    tryNotebook(body, planOf(), [{ file: `templates/${name}.md`, text }]);

  it("take the place of the standard chapter of their name", () => {
    const { sections, messages } = own("## My hem\n\nTurn up {{skirt.hem.depth}}.\n");
    expect(messages).toEqual([]);
    expect(sections.map(({ name }) => name)).toEqual(standard);
    expect(sections.find(({ name }) => name === "hem")?.markdown).toContain("## My hem");
  });

  it.each([
    ["hemm", "## A\n", ["templates/hemm.md 1:1 unknown-chapter"]],
    ["hem", "## A\n\n{{skirt.rund}}\n", ["templates/hem.md 3:3 unknown-name"]],
    ["hem", "## A\n\n{{> gauging}}\n", ["templates/hem.md 3:5 chapter-in-chapter"]],
    ["hem", "No title.\n", ["templates/hem.md 1:1 chapter-title"]],
    ["hem", "## A\n\n## B\n", ["templates/hem.md 1:1 chapter-title"]],
    ["hem", "## A\n\n{{skirt.tucks.count}}\n", ["templates/hem.md 3:1 no-value"]],
    ["hem", "## A\n\n```workings\na = 1\n```\n", ["templates/hem.md 3:1 workings-line"]],
    [
      "cautions",
      "## Cautions\n\nMind the needle. CAUTION.\n",
      ["templates/cautions.md 1:1 cautions-left-out"],
    ],
    ["gauging", "## Gauging\n\nSew.\n", ["templates/gauging.md 1:1 cautions-left-out"]],
    ["hem", "## A\n\n{{#if is.gauged}}\n", ["templates/hem.md 3:1 template"]],
  ])("%s: %j says %j", (name, text, wanted) => {
    const said = own(text, name).messages.map(
      (m) => `${m.place?.file} ${m.place?.line}:${m.place?.column} ${m.code}`,
    );
    expect(said).toEqual(wanted);
  });

  it("know the workings of the recipe", () => {
    const { messages, sections } = own(
      "## My hem\n\n{{tape2}}\n",
      "hem",
      "```workings\ntape2 = 2 in\n```\n\n{{> the-rest}}",
    );
    expect(messages).toEqual([]);
    expect(sections.find(({ name }) => name === "hem")?.markdown).toContain("2 in");
  });
});
