/** `plainwork record`, over a file system in memory. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import { fraction } from "../../src/quantity/quantity.ts";
import { readAsMadeFile } from "../../src/recipe/as-made/file.ts";
import { standing } from "../../src/recipe/as-made/standing.ts";
import { type Keys, recipeText } from "../recipes.ts";
import { asText, type MemoryWorld, memoryWorld } from "./memory.ts";

const TITLE = "A skirt for the tests (invented)";
const FILE = "/w/a/as-made.yaml";

const record = (more: object = {}) =>
  JSON.stringify(
    {
      "plainwork-record": 1,
      garment: TITLE,
      date: "2026-03-01",
      notebook: "n1",
      changes: {},
      ticked: [],
      notes: {},
      seconds: { gauging: 3600 },
      said: { hands: "M." },
      ...more,
    },
    null,
    1,
  );

function worldOf(files: Record<string, string> = {}, keys: Keys = {}): MemoryWorld {
  return memoryWorld({ "/w/a/recipe.md": recipeText(keys), "/w/r.json": record(), ...files });
}

async function run(world: MemoryWorld, ...argv: string[]): Promise<number> {
  world.said.out = "";
  world.said.err = "";
  return main(argv, world);
}

async function recorded(world: MemoryWorld, more: object): Promise<number> {
  world.files.set("/w/r.json", record(more));
  return run(world, "record", "a", "r.json");
}

function made(world: MemoryWorld) {
  const { asMade, messages } = readAsMadeFile("as-made.yaml", world.files.get(FILE) ?? "");
  if (!asMade) throw new Error(JSON.stringify(messages));
  return asMade;
}

const seconds = (world: MemoryWorld, chapter: string): string | undefined =>
  standing(made(world)).hours.get(chapter)?.value.toFraction();

describe("a record is added", () => {
  it("once: the same again adds nothing and says so", async () => {
    const world = worldOf();
    expect(await run(world, "record", "a", "r.json")).toBe(0);
    expect(world.said.out).toBe("a/as-made.yaml: added what was done, 2026-03-01\n");
    const before = world.files.get(FILE);
    expect(await run(world, "record", "a", "r.json")).toBe(0);
    expect(world.said.out).toBe("a/as-made.yaml: this record was added before (2026-03-01); nothing added\n");
    // Saved again on another day, it is the same record.
    expect(await recorded(world, { date: "2026-03-09" })).toBe(0);
    expect(world.said.out).toContain("nothing added");
    expect(world.files.get(FILE)).toBe(before);
    expect([...world.files.keys()].sort()).toEqual(["/w/a/as-made.yaml", "/w/a/recipe.md", "/w/r.json"]);
  });

  it("as data with --json", async () => {
    const world = worldOf();
    await run(world, "record", "a", "r.json", "--json");
    expect(JSON.parse(world.said.out)).toMatchObject({
      file: "a/as-made.yaml",
      added: true,
      date: "2026-03-01",
      messages: [],
    });
  });

  it("with what is new in it alone: times that ran on are told apart, and what was said before is not said again", async () => {
    const world = worldOf();
    await run(world, "record", "a", "r.json");
    await recorded(world, {
      seconds: { gauging: 5400, hem: 60 },
      said: { hands: "M.", lessons: "Wax the thread." },
    });
    const [, second] = made(world).entries;
    expect(second?.hours.gauging?.value.toFraction()).toBe("1800");
    expect(second?.hands).toBeUndefined();
    expect(second?.lessons).toBe("Wax the thread.");
    expect(seconds(world, "gauging")).toBe("5400");
    // A time that was corrected comes down; a chapter that is gone comes to nothing.
    await recorded(world, { seconds: { gauging: 5000 }, said: { hands: "M.", lessons: "Wax the thread." } });
    expect(seconds(world, "gauging")).toBe("5000");
    expect(seconds(world, "hem")).toBeUndefined();
  });

  it("with the times of another device beside those of the first", async () => {
    const world = worldOf();
    await run(world, "record", "a", "r.json");
    await recorded(world, { notebook: "n2", seconds: { gauging: 600 } });
    expect(seconds(world, "gauging")).toBe("4200");
    await recorded(world, { notebook: "n2", seconds: { gauging: 900 } });
    expect(seconds(world, "gauging")).toBe("4500");
  });

  it("with trial, made edge, changed measures, notes and counts", async () => {
    const world = worldOf({ "/w/a/photos/front.jpg": asText(Uint8Array.of(255, 216)) });
    await recorded(world, {
      changes: {
        "fullness.trial.cloth": "21 in",
        "fullness.trial.pleats": "18",
        "fullness.trial.closes-to": "2 1/2 in",
        "attach.made": "25 3/4 in",
        "skirt.placket": "11 in",
      },
      notes: { "gauging/3": "Two threads,\r\none needle." },
      ticked: ["gauging/1", "gauging/2", "hem/1"],
      photographs: ["photos/front.jpg"],
      said: {
        "made.round": "172 1/2 in",
        "off-floor.centre-front": "2 in",
        "hung.centre-back": "1 3/4 in",
        photographs: "photos/front.jpg",
      },
    });
    expect(world.said.err).toBe("");
    const now = standing(made(world));
    expect(now.trials[0]?.trial.pleats.value.toFraction()).toBe("18");
    expect(Object.keys(now.made).sort()).toEqual(["closed", "round"]);
    expect(now.measures).toEqual({ "skirt.placket": "11 in" });
    expect(made(world).entries[0]?.notes["gauging/3"]).toBe("Two threads,\none needle.");
    expect(now.photographs).toEqual(["photos/front.jpg"]);
    expect(now.counts.gauging?.value.toFraction()).toMatch(/^\d+$/);
    expect(made(world).entries[0]?.steps.gauging?.value.toFraction()).toBe("2");
  });

  it("with what was read at a fitting, kept among the notes and not taken back by the next record", async () => {
    const world = worldOf();
    const said = { "second-fitting/left side/Read": "2 1/8 in" };
    await recorded(world, { said });
    await recorded(world, { said: { ...said, lessons: "more light" } });
    const [first, second] = made(world).entries;
    expect(first?.notes).toEqual(said);
    expect(second?.notes).toEqual({});
    await run(world, "build", "a");
    expect(world.files.get("/w/output/a/booklet.md")).toContain("second fitting, left side, Read: 2 1/8 in");
  });

  it("with counts by the pleats really made: two rows of bites, two a pleat", async () => {
    const world = worldOf();
    await recorded(world, { said: { "made.pleats": "150" }, seconds: { gauging: 60, marking: 60 } });
    const { counts } = standing(made(world));
    expect([counts.gauging, counts.marking].map((count) => count?.value.toFraction())).toEqual([
      "600",
      "300",
    ]);
  });

  it("keeping what the maker wrote, her remarks too", async () => {
    const own = "# mine\n- date: 2026-01-01   # New Year\n  lessons: cut on the straight\n";
    const world = worldOf({ [FILE]: own });
    await run(world, "record", "a", "r.json");
    expect(world.files.get(FILE)?.startsWith(own)).toBe(true);
    expect(made(world).entries).toHaveLength(2);
  });
});

describe("a record is refused, and nothing is written", () => {
  const AT = 'r.json:3:13: error [another-garment] this record is of "Another"';
  it.each<[string, string, Record<string, string>, string[]]>([
    [
      "of another garment",
      record({ garment: "Another" }),
      {},
      [AT, `expected: "${TITLE}", the title in a/recipe.md`],
    ],
    ["that breaks off", record().slice(0, -20), {}, ["error [damaged-record] this record breaks off here"]],
    ["with a bracket missing", record().replace('"n1",', '"n1"'), {}, ["r.json:6:", "damaged-record"]],
    ["that is none", '{"a": 1}', {}, ["r.json:1:1: error [not-a-record]"]],
    ["that is a list", "[1, 2]", {}, ["[not-a-record]"]],
    ["that is nothing", "", {}, ["[damaged-record]"]],
    [
      "of a format to come",
      record({ "plainwork-record": 2 }),
      {},
      ['r.json:2:22: error [record-format] this record is of format "2"'],
    ],
    [
      "with seconds that are none",
      record({ seconds: { hem: -5 } }),
      {},
      ['error [damaged-record] "seconds hem"'],
    ],
    [
      "with a length without its unit",
      record({ said: { "made.round": "172" } }),
      {},
      ['error [not-a-length] "172" has no unit', '"made.round": "172"'],
    ],
    [
      "with a photograph that is not there",
      record({ photographs: ["photos/x.jpg"] }),
      {},
      ['error [no-photograph] there is no file "photos/x.jpg"'],
    ],
    ["with a photograph from elsewhere", record({ photographs: ["../x.jpg"] }), {}, ["error [photograph]"]],
    [
      "for a broken as-made.yaml",
      record(),
      { [FILE]: "- date: yesterday\n" },
      ["a/as-made.yaml:1:9: error [not-a-date]"],
    ],
    [
      "for a broken recipe",
      record(),
      { "/w/a/recipe.md": recipeText({ wearer: { waist: "27" } }) },
      ["a/recipe.md:5:"],
    ],
  ])("%s", async (_, text, files, says) => {
    const world = worldOf({ ...files, "/w/r.json": text });
    const before = [...world.files].sort();
    expect(await run(world, "record", "a", "r.json")).toBe(1);
    for (const words of says) expect(world.said.err).toContain(words);
    expect(world.said.err).toContain("a/as-made.yaml: nothing added");
    expect(world.said.err).not.toMatch(/undefined|\[object|NaN| {4}at /);
    expect([...world.files].sort()).toEqual(before);
  });

  it.each([
    [["record", "a"], "needs a garment's folder and one record"],
    [["record", "a", "r.json", "s.json"], "needs a garment's folder and one record"],
    [["record", "a", "none.json"], 'no record "none.json"'],
    [["record", "nowhere", "r.json"], 'no "nowhere"'],
    [["record", ".", "r.json"], "holds 2 garments"],
    [["record", "a", "r.json", "--loud"], "not an option"],
  ])("%j exits 2", async (argv, why) => {
    const world = worldOf({ "/w/b/recipe.md": recipeText() });
    expect(await run(world, ...argv)).toBe(2);
    expect(world.said.err).toContain(why);
  });

  it("what it does not know is told and left out", async () => {
    const world = worldOf();
    expect(await recorded(world, { said: { mood: "good" } })).toBe(0);
    expect(world.said.err).toContain('warning [unknown-entry] "mood" is not known here and was left out');
  });
});

describe("a failing disk", () => {
  it.each(["write", "rename", "sync"])(
    "at any %s leaves the old file or the new, and no leftovers",
    async (doing) => {
      const built = worldOf();
      await run(built, "record", "a", "r.json");
      const old = built.files.get(FILE);
      for (let at = 0; ; at += 1) {
        const world = memoryWorld(Object.fromEntries(built.files));
        world.files.set("/w/r.json", record({ said: { lessons: "new" } }));
        let count = 0;
        let failed = false;
        world.fault = (what, path) => {
          if (what !== doing || failed || count++ !== at) return;
          failed = true;
          throw Object.assign(new Error("no space"), { code: "ENOSPC", path });
        };
        const code = await run(world, "record", "a", "r.json");
        const now = world.files.get(FILE) as string;
        if (now !== old) expect(made(world).entries).toHaveLength(2);
        expect([...world.files.keys()].sort()).toEqual(["/w/a/as-made.yaml", "/w/a/recipe.md", "/w/r.json"]);
        if (!failed) break;
        expect(code).toBe(3);
        expect(world.said.err).toContain("the disk is full");
      }
    },
  );

  it("what a stopped run left is cleared away, and a live one is waited for and not robbed", async () => {
    const world = worldOf({ "/w/a/.as-made.yaml.lock": "gone-1", [`${FILE}.new-gone`]: "- date" });
    expect(await run(world, "record", "a", "r.json")).toBe(0);
    expect([...world.files.keys()].sort()).toEqual(["/w/a/as-made.yaml", "/w/a/recipe.md", "/w/r.json"]);
    const busy = worldOf({ "/w/a/.as-made.yaml.lock": "alive" });
    expect(await run(busy, "record", "a", "r.json")).toBe(3);
    expect(busy.said.err).toContain("another run is writing here");
    expect(busy.files.get("/w/a/.as-made.yaml.lock")).toBe("alive");
    expect(busy.files.has(FILE)).toBe(false);
  });
});

describe("the next build", () => {
  const booklet = (world: MemoryWorld, name: string): string =>
    world.files.get(`/w/output/${name}/booklet.md`) ?? "";

  it("shows plan against made, and other garments are planned at the pace of finished ones", async () => {
    const world = worldOf({ "/w/b/recipe.md": recipeText({ title: "Another" }) });
    await run(world, "build", "a", "b");
    const before = JSON.parse(world.files.get("/w/output/b/plan.json") ?? "").values;
    await recorded(world, {
      seconds: { gauging: 3600, whipping: 3600 },
      said: { finished: "May", "made.round": "174 in" },
    });
    expect(await run(world, "build", "a", "b")).toBe(0);
    // By hand: planned 173 in, made 174 in; 1/173 is 0.6 %.
    expect(booklet(world, "a")).toContain(
      "| Round | 173 in | 174 in | +1 in (+0.6 %) | the fullness is then 6.82 : 1 |",
    );
    expect(booklet(world, "a")).not.toContain("other garment you recorded");
    expect(booklet(world, "b")).toContain("from 1 other garment you recorded");
    const { values, garment } = JSON.parse(world.files.get("/w/output/b/plan.json") ?? "");
    const bites = BigInt(values["gauging.bites"].exact);
    // Her gauging took 3600 seconds for as many bites as this one has; the quicker hand is a tenth quicker.
    expect(values["rate.gauging.high"].exact).toBe(fraction(11n * bites, 36_000n).toFraction());
    expect(values["rate.gauging.low"].exact).toBe(fraction(9n * bites, 36_000n).toFraction());
    expect(values["work.low"].exact).not.toBe(before["work.low"].exact);
    expect(garment.state).toBe("planned");
    expect(JSON.parse(world.files.get("/w/output/a/plan.json") ?? "").garment.state).toBe("made");
    const files = [...world.files].sort();
    await run(world, "build", "a", "b");
    expect([...world.files].sort()).toEqual(files);
  });

  it("keeps to a rate that the recipe gives", async () => {
    const world = worldOf({
      "/w/b/recipe.md": recipeText({ title: "Another", work: { rates: { gauging: "18 per min" } } }),
    });
    await recorded(world, { said: { finished: "May" } });
    await run(world, "build", "a", "b");
    expect(JSON.parse(world.files.get("/w/output/b/plan.json") ?? "").values["rate.gauging.low"].shown).toBe(
      "18 a minute",
    );
    expect(booklet(world, "b")).not.toContain("you recorded");
  });

  it("passes over a neighbour's record that cannot be read, and says so", async () => {
    const world = worldOf({ "/w/b/recipe.md": recipeText({ title: "Another" }), [FILE]: "- date: never\n" });
    expect(await run(world, "build", "b")).toBe(0);
    expect(world.said.err).toContain('note [record-unread] the record of "a" cannot be read');
  });
});

describe("the demo's archived garment", () => {
  it("was recorded twice, with a trial that failed, by the records that are kept here", async () => {
    const demo = new URL("../../demo-projects/brown-twill-retried/", import.meta.url);
    const kept = (name: string) => readFileSync(new URL(`records/${name}.json`, import.meta.url), "utf8");
    const world = memoryWorld({
      "/w/a/recipe.md": readFileSync(new URL("recipe.md", demo), "utf8"),
      "/w/1.json": kept("brown-twill-first"),
      "/w/2.json": kept("brown-twill-last"),
    });
    for (const n of [1, 2, 1, 2]) expect(await run(world, "record", "a", `${n}.json`)).toBe(0);
    expect(world.files.get(FILE)).toBe(readFileSync(new URL("as-made.yaml", demo), "utf8"));
    await run(world, "build", "a");
    const text = world.files.get("/w/output/a/booklet.md") ?? "";
    expect(text).toContain("does not close: longer bites");
    expect(text).toContain("closes: the bites hold");
    expect(text.match(/^\| 2026-\d\d-\d\d \| \d+ h/gm)).toHaveLength(2);
  });
});
