/** What the program stands on: few packages, each pinned, and listed in DEVELOPERS.md with its licence, why it is there and what would replace it. */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const at = (path: string): string => readFileSync(new URL(`../${path}`, import.meta.url), "utf8");
const {
  dependencies,
  devDependencies,
  overrides = {},
} = JSON.parse(at("package.json")) as Record<string, Record<string, string>>;
const lock = JSON.parse(at("package-lock.json")) as {
  packages: Record<string, { version?: string; integrity?: string; resolved?: string }>;
};

/** Rows of the list: a package, its licence, why, what would replace it. */
const rows = [...at("DEVELOPERS.md").matchAll(/^\| `([^|]+)` \| ([^|]+) \| ([^|]+) \| ([^|]+) \|$/gm)].map(
  ([, packages = "", licence = "", why = "", instead = ""]) => ({
    packages: packages.split("`, `"),
    licence,
    why,
    instead,
  }),
);
const licenceOf = new Map(
  rows.flatMap(({ packages, licence }) => packages.map((name) => [name, licence] as const)),
);
const all = { ...dependencies, ...devDependencies };

it("every version is written out, and is the one that the lock file and the disk have", () => {
  for (const [name, version] of Object.entries({ ...all, ...overrides })) {
    expect([name, version]).toEqual([name, expect.stringMatching(/^\d+\.\d+\.\d+$/)]);
    expect([name, lock.packages[`node_modules/${name}`]?.version]).toEqual([name, version]);
    expect([name, JSON.parse(at(`node_modules/${name}/package.json`)).version]).toEqual([name, version]);
  }
});

it("the lock file has a checksum for everything, and names no other place than the registry", () => {
  // Where no place is named, npm takes it from the registry that is set; the checksum holds wherever it comes from.
  const loose = Object.entries(lock.packages).filter(
    ([path, { integrity, resolved = "https://registry.npmjs.org/" }]) =>
      path !== "" &&
      !(integrity?.startsWith("sha512-") && resolved.startsWith("https://registry.npmjs.org/")),
  );
  expect(loose.map(([path]) => path)).toEqual([]);
  expect(Object.keys(lock.packages).length).toBeGreaterThan(Object.keys(all).length);
});

it("each is listed with why it is there and what would replace it, and none that is not there", () => {
  expect([...licenceOf.keys()].sort()).toEqual(Object.keys(all).sort());
  for (const { why, instead } of rows)
    expect([why.length, instead.length].every((length) => length > 8)).toBe(true);
});

it("the licences are those of the packages", () => {
  for (const name of Object.keys(all)) {
    const { license } = JSON.parse(at(`node_modules/${name}/package.json`)) as { license?: string };
    expect([name, licenceOf.get(name)]).toEqual([name, license]);
  }
});

it("what the program itself carries is few packages", () => {
  expect(Object.keys(dependencies ?? {}).length).toBeLessThanOrEqual(12);
});
