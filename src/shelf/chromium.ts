/** Finds the browser that prints: Chromium or one made from it. */
import { posix, win32 } from "node:path";
import type { World } from "./world.ts";

/** Settings that name the browser's file; the first that is set counts, also when it is wrong. */
export const SETTINGS = ["PLAINWORK_CHROMIUM", "CHROME_PATH"] as const;

/** Names of its program, as they stand on a system's path. */
const NAMES = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "chrome",
  "microsoft-edge",
] as const;

const MAC = ["Chromium", "Google Chrome", "Microsoft Edge"].map(
  (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
);

const LINUX = ["/usr/bin", "/usr/local/bin", "/snap/bin", "/opt/google/chrome"];

const WINDOWS = [
  ["Chromium", "Application", "chrome.exe"],
  ["Google", "Chrome", "Application", "chrome.exe"],
  ["Microsoft", "Edge", "Application", "msedge.exe"],
] as const;

/** The file of the browser, or undefined where there is none. */
export function findChromium(world: World): string | undefined {
  for (const setting of SETTINGS) {
    const named = world.env(setting);
    if (named) return world.kind(named) === "file" ? named : undefined;
  }
  return placesOf(world).find((place) => world.kind(place) === "file");
}

function placesOf(world: World): readonly string[] {
  const windows = world.platform === "win32";
  const { join, delimiter } = windows ? win32 : posix;
  const path = (world.env("PATH") ?? "").split(delimiter).filter(Boolean);
  const onPath = path.flatMap((folder) => NAMES.map((name) => join(folder, windows ? `${name}.exe` : name)));
  if (windows) {
    const roots = ["LOCALAPPDATA", "ProgramFiles", "ProgramFiles(x86)"]
      .map((name) => world.env(name))
      .filter((root) => root !== undefined);
    return [...onPath, ...WINDOWS.flatMap((parts) => roots.map((root) => join(root, ...parts)))];
  }
  const usual =
    world.platform === "darwin" ? MAC : LINUX.flatMap((folder) => NAMES.map((name) => join(folder, name)));
  return [...onPath, ...usual];
}
