/** Many garments by several hands: told in their order, every fault told as it would be by one, stopped at once. */
import { describe, expect, it } from "vitest";
import { main } from "../../src/main.ts";
import type { Asked } from "../../src/shelf/garment.ts";
import type { Answer, Hands } from "../../src/shelf/hands.ts";
import { garmentTask } from "../../src/shelf/many.ts";
import { recipeText } from "../recipes.ts";
import { type MemoryWorld, memoryWorld } from "./memory.ts";

const NAMES = ["a", "b", "c", "d", "e", "f", "g", "h"];

function worldOf(): MemoryWorld {
  return memoryWorld(
    Object.fromEntries(
      NAMES.map((name) => [`/w/garments/${name}/recipe.md`, recipeText({ title: `Skirt ${name}` })]),
    ),
  );
}

interface Sat {
  readonly world: MemoryWorld;
  readonly ended: number[];
  stop?: () => void;
}

/** Hands that work after a while, the later garments of a pair first. */
function withHands(world: MemoryWorld, count: number, after?: (done: number, sat: Sat) => void): Sat {
  const sat: Sat = { world, ended: [] };
  let started = 0;
  let done = 0;
  const hands: Hands = {
    count,
    start(task, answered) {
      const own = started;
      started += 1;
      let isEnded = false;
      const work = garmentTask(world, task as Asked);
      return {
        give(job) {
          const copy = structuredClone(job);
          setTimeout(() => {
            if (isEnded) return;
            const answer: Answer<unknown> = structuredClone(work(copy));
            done += 1;
            after?.(done, sat);
            answered(answer);
          }, 5 - own);
        },
        end: () => {
          isEnded = true;
          sat.ended.push(own);
          return Promise.resolve();
        },
      };
    },
    onStop(stop) {
      sat.stop = stop;
      return () => {
        delete sat.stop;
      };
    },
  };
  Object.assign(world, { hands });
  return sat;
}

describe("several hands", () => {
  it("make what one makes, and tell it in the same order", async () => {
    const alone = worldOf();
    expect(await main(["build", "garments"], alone)).toBe(0);
    const sat = withHands(worldOf(), 3);
    expect(await main(["build", "garments"], sat.world)).toBe(0);
    expect(sat.world.said).toEqual(alone.said);
    expect([...sat.world.files].sort()).toEqual([...alone.files].sort());
    expect(sat.ended.toSorted()).toEqual([0, 1, 2]);
    expect(sat.stop).toBeUndefined();
  });

  it("check as one checks, as text and for a program", async () => {
    for (const words of [[], ["--json"]]) {
      const [alone, sat] = [worldOf(), withHands(worldOf(), 2)];
      for (const world of [alone, sat.world])
        world.files.set("/w/garments/c/recipe.md", recipeText({ cloth: { width: "0 in" } }));
      expect(await main(["check", "garments", ...words], alone)).toBe(1);
      expect(await main(["check", "garments", ...words], sat.world)).toBe(1);
      expect(sat.world.said).toEqual(alone.said);
    }
  });

  it("tell a fault as one would, and end", async () => {
    const faults: readonly ((world: MemoryWorld) => void)[] = [
      (world) => void world.files.set("/w/output/d/mine.txt", "my own"),
      (world) => {
        world.fault = (doing, path) => {
          if (doing === "write" && path.includes(".d.new-"))
            throw Object.assign(new Error("no room"), { code: "ENOSPC", path });
        };
      },
    ];
    for (const spoil of faults) {
      const [alone, sat] = [worldOf(), withHands(worldOf(), 2)];
      for (const world of [alone, sat.world]) spoil(world);
      expect([
        await main(["build", "garments"], alone),
        await main(["build", "garments"], sat.world),
      ]).toEqual([3, 3]);
      expect(sat.world.said.err).toBe(alone.said.err);
      expect(sat.ended.toSorted()).toEqual([0, 1]);
    }
  });

  it("stop at once: what is built stands, what is not is as it was, nothing lies about", async () => {
    const world = worldOf();
    const sat = withHands(world, 2, (done, { stop }) => {
      if (done !== 4) return;
      world.files.set("/w/output/.e.new-1/booklet.html", "half");
      world.files.set("/w/output/.f.old-1/plan.json", "{}");
      stop?.();
    });
    expect(await main(["build", "garments"], world)).toBe(130);
    expect(world.said.err).toMatch(
      /^plainwork: stopped: \d of 8 garments are done; the others are as they were\n$/m,
    );
    expect(sat.ended.toSorted()).toEqual([0, 1]);
    const names = world.list("/w/output");
    expect(names.filter((name) => name.startsWith("."))).toEqual([]);
    expect(names).toContain("f");
    expect(names).not.toContain("e");
  });
});
