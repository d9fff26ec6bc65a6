/** The contact sheet shows every figure that is kept. */
import { existsSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { figuresOf } from "../../src/figure/index.ts";
import { DEMOS, demo } from "../demos.ts";

it("the contact sheet has every figure of every demo, and points at files that are there: npm run sheet renews it", () => {
  const page = readFileSync(new URL("./sheet.html", import.meta.url), "utf8");
  const shown = [...page.matchAll(/src="([^"]+)"/g)]
    .map(([, path = ""]) => path)
    .filter((path) => !path.startsWith("changed/"));
  const wanted = DEMOS.flatMap((name) =>
    figuresOf(demo(name)).map((figure) => `../../output/${name}/figures/${figure}.svg`),
  );
  expect(shown.sort()).toEqual(wanted.sort());
  for (const path of shown) expect(existsSync(new URL(path, import.meta.url)), path).toBe(true);
});
