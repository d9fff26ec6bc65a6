/** The page of `plainwork open` in a real browser, as a maker uses it. */
import { readdirSync, readFileSync, unlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { Browser, FrameLocator, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { Opened } from "../../src/open/server.ts";
import { ALL_DEMOS } from "../long.ts";
import { launch } from "../page/browser.ts";
import { axeFindings } from "../page/opened.ts";
import { type Copy, copyOf, openHere, start } from "./opened.ts";

/** In the long run only. */
const long = it.runIf(ALL_DEMOS);

const SLOW = { timeout: 20_000 };

let browser: Browser;
let copy: Copy;
let opened: Opened;
const trouble: string[] = [];

beforeAll(async () => {
  browser = await launch();
});
afterAll(() => browser?.close());
beforeEach(async () => {
  trouble.length = 0;
  copy = copyOf("green-silk-1862");
  opened = await openHere(copy);
});
afterEach(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
  await opened?.close();
  copy?.remove();
});

interface Sides {
  readonly page: Page;
  readonly booklet: FrameLocator;
}

async function visit(
  options: Parameters<Browser["newContext"]>[0] = {},
  address = opened.address,
): Promise<Sides> {
  const context = await browser.newContext({ viewport: { width: 1200, height: 800 }, ...options });
  const page = await context.newPage();
  page.on("console", (said) => void (said.type() === "error" && trouble.push(said.text())));
  page.on("pageerror", (error) => void trouble.push(error.message));
  page.on("dialog", (dialog) => void dialog.accept());
  await page.goto(address);
  const booklet = page.frameLocator("iframe");
  await booklet
    .locator("main > section")
    .first()
    .waitFor({ state: "attached", ...SLOW });
  return { page, booklet };
}

const poll = (what: () => unknown) => expect.poll(what, SLOW);
const text = (page: Page): Promise<string> =>
  page.locator(".pane.recipe .cm-content").evaluate((content) => {
    const lines = [...content.querySelectorAll(".cm-line")].map((line) => line.textContent ?? "");
    return lines.join("\n");
  });
const saying = (page: Page): Promise<string | null> => page.locator(".saving").textContent();
const waist = (booklet: FrameLocator) =>
  booklet.locator('#at-a-glance data[data-name="waist.seam"]').first().textContent();
const kept = (): string[] => readdirSync(copy.folder).filter((name) => name.includes(".kept-"));

/** Puts the cursor behind a piece of text. */
async function behind(page: Page, piece: string): Promise<void> {
  await page.locator(".pane.recipe .cm-content").focus();
  await page.evaluate((piece) => {
    const lines = [...document.querySelectorAll(".pane.recipe .cm-line")];
    const line = lines.find((one) => one.textContent?.includes(piece)) as Element;
    let left = (line.textContent ?? "").indexOf(piece) + piece.length;
    const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
      if (left <= node.data.length) {
        getSelection()?.collapse(node, left);
        return;
      }
      left -= node.data.length;
    }
  }, piece);
}

describe("text and booklet", () => {
  it("change each other: typed measures, fields, undo, wrong words with their messages", {
    timeout: 120_000,
  }, async () => {
    const { page, booklet } = await visit();
    expect(await waist(booklet)).toBe("25 in");
    // A measure typed in the text.
    await behind(page, "waist: 24");
    await page.keyboard.press("Backspace");
    await page.keyboard.type("6");
    await poll(() => waist(booklet)).toBe("27 in");
    await poll(() => copy.read()).toContain("  waist: 26 1/2 in\n");
    // A measure changed in the booklet: its characters of the text, and no others.
    const field = booklet.locator('input[name="wearer.waist-to-floor.side"]');
    await field.fill("43 in");
    await poll(() => copy.read()).toContain(
      "  waist-to-floor: {front: 41 in, side: 43 in, back: 44 in}   # over the hoop",
    );
    expect(await text(page)).toContain("side: 43 in");
    // Undo, from the booklet too.
    await field.press("Control+z");
    await poll(() => copy.read()).toContain("side: 42 1/2 in");
    expect(await field.inputValue()).toBe("42 1/2 in");
    // What is wrong is said in the margin, in the list and at the field; the booklet stays.
    await field.fill("43");
    await poll(() => page.locator(".messages").textContent()).toContain("has no unit");
    expect(await page.locator(".cm-lint-marker-error").count()).toBe(1);
    expect(await booklet.locator(".field-message").textContent()).toContain("has no unit");
    expect(await page.locator(".stale").textContent()).toContain("1 error");
    expect(await waist(booklet)).toBe("27 in");
    await page.locator(".messages button").click();
    expect(await page.evaluate(() => document.activeElement?.className)).toContain("cm-content");
    await page.keyboard.press("Control+z");
    await poll(() => page.locator(".messages").textContent()).not.toContain("error");
    // A key that is not there is put in at its place; emptied and left, it goes again.
    const made = booklet.locator('input[name="attach.made"]');
    await made.fill("27 1/4 in");
    await poll(() => copy.read()).toContain(
      "attach:\n  to: part-band                    # the skirt hangs on its bodice, and in front on a short band\n  made: 27 1/4 in\n",
    );
    await made.fill("");
    await made.blur();
    await poll(() => copy.read()).not.toContain("made:");
    // Completion with meanings.
    await behind(page, "off-floor: 1 1/2 in");
    await page.keyboard.type("\ntu");
    await page.keyboard.press("Control+Space");
    await poll(() => page.locator(".cm-tooltip-autocomplete li").allTextContents()).toContainEqual(
      expect.stringContaining("turn-down"),
    );
    await page.keyboard.press("Escape");
    expect(trouble).toEqual([]);
    await poll(() => saying(page)).toContain("Saved");
  });

  long(
    "a note is written, its values come along, and chapters and figures are offered",
    {
      timeout: 120_000,
    },
    async () => {
      const { page, booklet } = await visit();
      await page.locator(".pane.recipe .cm-content").focus();
      await page.keyboard.press("Control+End");
      await page.keyboard.type("\nFor the assembly, {{wai");
      await poll(() => page.locator(".cm-tooltip-autocomplete li[aria-selected]").textContent()).toContain(
        "waist.",
      );
      await page.keyboard.press("Escape");
      await page.keyboard.type("st.seam}} round.\n\n{{> the-rest}}\n");
      await poll(() => booklet.locator("#note-1").textContent()).toContain("For the assembly, 25 in round.");
      await page.keyboard.type("\n{{> bal");
      await poll(() => page.locator(".cm-tooltip-autocomplete li").first().textContent()).toContain(
        "balance",
      );
      // What has only just appeared is not taken by a key that was meant for the text.
      await page.waitForTimeout(300);
      await page.keyboard.press("Enter");
      await poll(() => text(page)).toContain("{{> balance}}");
      await page.keyboard.type('\n\n{{figure "hem');
      await poll(() => page.locator(".cm-tooltip-autocomplete li").first().textContent()).toContain("hem");
      await page.keyboard.press("Escape");
      await page.keyboard.type('"}}\n\n{{word "bites" "bi');
      await poll(() => page.locator(".cm-tooltip-autocomplete li").first().textContent()).toContain("bite");
      await page.keyboard.press("Escape");
      expect(trouble).toEqual([]);
    },
  );
});

describe("file and windows", () => {
  it("takes over a change from elsewhere, undoably; keeps both when both were changed; shows them; nothing is lost", {
    timeout: 120_000,
  }, async () => {
    const { page, booklet } = await visit();
    const original = copy.read();
    writeFileSync(copy.recipe, original.replace("waist: 24 1/2 in", "waist: 25 1/2 in"));
    await poll(() => waist(booklet)).toBe("26 in");
    await page.locator(".pane.recipe .cm-content").focus();
    await page.keyboard.press("Control+z");
    await poll(() => copy.read()).toBe(original);
    // Both: the page's text is on its way while another program writes.
    await behind(page, "off-floor: 1");
    await page.keyboard.type("0");
    writeFileSync(copy.recipe, original.replace("breadths: 5", "breadths: 6"));
    const conflict = page.locator(".conflict");
    await conflict.waitFor(SLOW);
    expect(copy.read()).toContain("breadths: 6");
    expect(kept()).toHaveLength(1);
    expect(readFileSync(join(copy.folder, kept()[0] as string), "utf8")).toContain("off-floor: 10 1/2 in");
    expect(await conflict.textContent()).toContain(kept()[0] as string);
    expect(await conflict.locator(".cm-merge-a").textContent()).toContain("breadths: 6");
    expect(await conflict.locator(".cm-merge-b").textContent()).toContain("off-floor: 10 1/2 in");
    await page.getByRole("button", { name: "Save mine as it stands here" }).click();
    await poll(() => copy.read()).toContain("off-floor: 10 1/2 in");
    expect(kept()).toHaveLength(1);
    expect(readFileSync(join(copy.folder, kept()[0] as string), "utf8")).toContain("breadths: 6");
    expect(await conflict.count()).toBe(0);
    // The file is taken away: that is said, and it can be put back.
    unlinkSync(copy.recipe);
    await conflict.waitFor(SLOW);
    await page.getByRole("button", { name: "Put mine back" }).click();
    await poll(() => readdirSync(copy.folder)).toContain("recipe.md");
    expect(copy.read()).toContain("off-floor: 10 1/2 in");
    expect(trouble.filter((one) => !one.includes("409"))).toEqual([]);
  });

  long("two windows follow each other, and typing in both loses nothing", { timeout: 120_000 }, async () => {
    const one = await visit();
    const two = await visit();
    await behind(one.page, "waist: 24");
    await one.page.keyboard.press("Backspace");
    await one.page.keyboard.type("6");
    await poll(() => waist(two.booklet)).toBe("27 in");
    await behind(one.page, "off-floor: 1");
    await behind(two.page, "breadths: 5");
    await Promise.all([one.page.keyboard.type("0"), two.page.keyboard.type("0")]);
    await poll(
      async () =>
        (await one.page.locator(".conflict").count()) + (await two.page.locator(".conflict").count()),
    ).toBeGreaterThan(0);
    const all = [copy.read(), ...kept().map((name) => readFileSync(join(copy.folder, name), "utf8"))].join(
      "\n",
    );
    expect(all).toContain("off-floor: 10 1/2 in");
    expect(all).toContain("breadths: 50");
  });

  long(
    "says that the server is gone, keeps the text, and brings it back at the next start",
    {
      timeout: 120_000,
    },
    async () => {
      const first = await start(copy);
      const context = await browser.newContext({ viewport: { width: 1200, height: 800 } });
      const page = await context.newPage();
      await page.goto(first.address);
      await page
        .frameLocator("iframe")
        .locator("main > section")
        .first()
        .waitFor({ state: "attached", ...SLOW });
      await first.kill();
      await behind(page, "off-floor: 1");
      await page.keyboard.type("0");
      await poll(() => saying(page)).toContain("Not saved");
      const second = await start(copy);
      try {
        expect(new URL(second.address).port).toBe(new URL(first.address).port);
        await poll(() => saying(page)).toContain("started anew");
        const later = await context.newPage();
        await later.goto(second.address);
        await later.locator(".conflict").waitFor(SLOW);
        expect(await later.locator(".conflict .cm-merge-b").textContent()).toContain("off-floor: 10 1/2 in");
        expect(copy.read()).toContain("off-floor: 1 1/2 in");
      } finally {
        await second.kill();
        await context.close();
      }
    },
  );
});

describe("for everyone", () => {
  it("goes by keyboard alone, from the text to the booklet and back", { timeout: 120_000 }, async () => {
    const { page } = await visit();
    const active = (): Promise<string> =>
      page.evaluate(() => {
        const element = document.activeElement;
        return element?.tagName === "IFRAME"
          ? "booklet"
          : element?.classList.contains("cm-content")
            ? "text"
            : (element?.textContent ?? "");
      });
    await poll(active).toBe("text");
    await page.keyboard.press("Shift+Tab");
    await poll(active).not.toBe("text");
    await page.keyboard.press("Tab");
    await poll(active).toBe("text");
    await page.keyboard.press("F6");
    await poll(active).toBe("booklet");
    await page.keyboard.press("F6");
    await poll(active).toBe("text");
    // Past the messages.
    for (let i = 0; i < 6 && (await active()) !== "booklet"; i += 1) await page.keyboard.press("Tab");
    expect(await active()).toBe("booklet");
  });

  it("shows one at a time on a narrow screen, nothing wider than it", { timeout: 120_000 }, async () => {
    const { page, booklet } = await visit({ viewport: { width: 390, height: 780 }, hasTouch: true });
    expect(await booklet.locator("h1").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Booklet" }).tap();
    expect(await booklet.locator("h1").isVisible()).toBe(true);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(390);
    expect(await booklet.locator("html").evaluate((html) => html.scrollWidth)).toBeLessThanOrEqual(390);
  });

  long(
    "has nothing that axe finds, with messages, completion, two versions",
    {
      timeout: 120_000,
    },
    async () => {
      const { page } = await visit({ bypassCSP: true });
      expect(await axeFindings(page)).toEqual([]);
      await behind(page, "waist: 24 1/2");
      await page.keyboard.type("x");
      await poll(() => page.locator(".messages button").count()).toBeGreaterThan(0);
      expect(await axeFindings(page)).toEqual([]);
      await page.keyboard.type("y");
      writeFileSync(copy.recipe, "---\nrecipe: 1\n---\n");
      await page.locator(".conflict").waitFor(SLOW);
      expect(await axeFindings(page)).toEqual([]);
    },
  );
});
