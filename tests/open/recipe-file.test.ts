/** The recipe's file: never half, never over what was not seen, and what is not written is kept. */
import { chmodSync, readdirSync, readFileSync, statSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { checksumOf, RecipeFile } from "../../src/open/recipe-file.ts";
import { type Copy, copyOf } from "./opened.ts";

let copy: Copy;
let file: RecipeFile;
let first: string;

beforeEach(() => {
  copy = copyOf("mill-house-cotton");
  file = new RecipeFile(copy.recipe);
  first = copy.read();
});
afterEach(() => copy.remove());

const files = (): string[] => readdirSync(copy.folder).sort();
const base = (): string => file.read()?.checksum ?? "";

describe("saving", () => {
  it("writes over the version it was made of, and leaves nothing else behind", () => {
    chmodSync(copy.recipe, 0o640);
    expect(file.save(base(), `${first}More.\n`)).toEqual({
      is: "saved",
      checksum: checksumOf(`${first}More.\n`),
    });
    expect(copy.read()).toBe(`${first}More.\n`);
    expect(statSync(copy.recipe).mode & 0o777).toBe(0o640);
    expect(files()).toEqual(["recipe.md"]);
  });

  it("keeps both versions where the file was changed elsewhere", () => {
    const seen = base();
    writeFileSync(copy.recipe, "theirs");
    const saved = file.save(seen, "mine");
    expect(saved).toMatchObject({ is: "changed-elsewhere", theirs: { text: "theirs" } });
    if (saved.is !== "changed-elsewhere") return;
    expect(copy.read()).toBe("theirs");
    expect(readFileSync(join(copy.folder, saved.kept), "utf8")).toBe("mine");
    expect(file.readKept(saved.kept)?.text).toBe("mine");
  });

  it("renews the kept file of one sitting, makes a new one for another, and takes it away once its text is saved", () => {
    const kept = file.keep("mine");
    expect(file.keep("mine, longer", kept)).toBe(kept);
    expect(new RecipeFile(copy.recipe).keep("another's", kept)).not.toBe(kept);
    expect(file.readKept(kept)?.text).toBe("mine, longer");
    file.save(base(), "mine, longer", kept);
    expect(file.readKept(kept)).toBeUndefined();
    expect(file.keptVersions()).toHaveLength(1);
  });

  it("is content where the file says the same already", () => {
    writeFileSync(copy.recipe, "the same");
    expect(file.save("0000", "the same")).toMatchObject({ is: "saved" });
  });

  it("tells that the file is gone, and puts it back when that is wished", () => {
    const seen = base();
    unlinkSync(copy.recipe);
    expect(file.save(seen, "mine")).toMatchObject({ is: "changed-elsewhere" });
    expect(file.save("", "mine")).toMatchObject({ is: "saved" });
    expect(copy.read()).toBe("mine");
  });

  it("sweeps up what a killed writer left, and passes over its lock", () => {
    writeFileSync(join(copy.folder, ".recipe.md.saving-999999-1"), "half");
    writeFileSync(join(copy.folder, ".recipe.md.lock"), "999999");
    expect(new RecipeFile(copy.recipe).save(base(), "mine")).toMatchObject({ is: "saved" });
    expect(files()).toEqual(["recipe.md"]);
  });
});
