/** When text goes out, by a clock of the test's own. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/open/page/project.ts";
import { Saving, type State } from "../../src/open/page/saving.ts";

/** A page with a clock that stands until it is moved. */
function page(answers: (text: string, base: string) => Answer) {
  let now = 0;
  let timers: { at: number; what: () => void }[] = [];
  const states: State["is"][] = [];
  const sent: { at: number; text: string; base: string }[] = [];
  const noted: (string | null)[] = [];
  const self = { text: "start" };
  const saving = new Saving(
    {
      send: async (base, text) => {
        sent.push({ at: now, text, base });
        return answers(text, base);
      },
      after: (milliseconds, what) => {
        const timer = { at: now + milliseconds, what };
        timers.push(timer);
        return () => {
          timers = timers.filter((one) => one !== timer);
        };
      },
      now: () => now,
      text: () => self.text,
      show: ({ is }) => void states.push(is),
      journal: (unsaved) => void noted.push(unsaved?.text ?? null),
    },
    { text: "start", checksum: "c0" },
  );
  return {
    saving,
    sent,
    states,
    noted,
    type(text: string) {
      self.text = text;
      saving.typed();
    },
    async pass(milliseconds: number) {
      const end = now + milliseconds;
      for (;;) {
        const next = timers.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
        if (!next) break;
        now = next.at;
        timers = timers.filter((one) => one !== next);
        next.what();
        for (let i = 0; i < 5; i += 1) await Promise.resolve();
      }
      now = end;
    },
  };
}

const saved = (text: string): Answer => ({ is: "saved", checksum: `of ${text}` });

describe("saving", () => {
  it("waits for a pause", async () => {
    const { type, pass, sent, states } = page(saved);
    type("a");
    await pass(100);
    type("ab");
    await pass(240);
    expect(sent).toEqual([]);
    await pass(20);
    expect(sent).toEqual([{ at: 350, text: "ab", base: "c0" }]);
    expect(states).toEqual(["typing", "saved"]);
  });

  it("waits no longer than 0.7 s however fast the keys fall, and goes on from what was saved", async () => {
    const { type, pass, sent } = page(saved);
    for (let i = 1; i <= 30; i += 1) {
      type("x".repeat(i));
      await pass(50);
    }
    expect(sent[0]?.at).toBe(700);
    expect(sent.every(({ at }, i) => i === 0 || at - (sent[i - 1]?.at ?? 0) <= 750)).toBe(true);
    expect(sent[1]?.base).toBe(`of ${sent[0]?.text}`);
    await pass(1000);
    expect(sent.at(-1)?.text).toBe("x".repeat(30));
  });

  it("sends nothing where everything was undone", async () => {
    const { type, pass, sent, saving } = page(saved);
    type("a");
    type("start");
    await pass(2000);
    expect(sent).toEqual([]);
    expect(saving.isClean).toBe(true);
  });

  it("notes the text while the server is away, tries every second, and forgets the note when it is saved", async () => {
    let away = true;
    const { type, pass, states, noted, sent } = page((text) => (away ? { is: "away" } : saved(text)));
    type("a");
    await pass(1500);
    type("ab");
    expect(states.at(-1)).toBe("away");
    expect(noted.at(-1)).toBe("ab");
    away = false;
    await pass(1000);
    expect(states.at(-1)).toBe("saved");
    expect(noted.at(-1)).toBeNull();
    expect(sent.at(-1)?.text).toBe("ab");
  });

  it("holds everything back in a conflict until it is settled", async () => {
    let theirs = true;
    const { type, pass, states, sent, saving } = page((text) =>
      theirs ? { is: "changed-elsewhere", theirs: { text: "t", checksum: "ct" }, kept: "k" } : saved(text),
    );
    type("a");
    await pass(1000);
    type("ab");
    await pass(5000);
    expect(sent).toHaveLength(1);
    expect(saving.isClean).toBe(false);
    theirs = false;
    await saving.settle({ text: "t", checksum: "ct" }, "k");
    expect(sent.at(-1)).toMatchObject({ text: "ab", base: "ct" });
    expect(states.at(-1)).toBe("saved");
  });

  it("says that an earlier start's page is no longer known", async () => {
    const { type, pass, states, noted } = page(() => ({ is: "stale" }));
    type("a");
    await pass(300);
    expect(states.at(-1)).toBe("stale");
    expect(noted.at(-1)).toBe("a");
  });
});
