/** What is said when printing was asked and could not be done: the booklets themselves are built. */

import { SETTINGS } from "./chromium.ts";
import type { Report } from "./report.ts";
import type { World } from "./world.ts";

/** What to do where no browser prints. */
export const BY_HAND =
  'print by hand: open booklet.html in a browser, choose Print, the paper (A4 or Letter) and 100 % ("actual size"); the guides come out at true size';

/** Why not everything that was built was printed; undefined when it was. */
export function notPrinted(
  world: World,
  browser: string | undefined,
  reports: readonly Report[],
): string | undefined {
  if (!browser) {
    const setting = SETTINGS.find((name) => world.env(name));
    return setting
      ? `built, but not printed: ${setting} names "${world.env(setting)}", and no such file is there`
      : "built, but not printed: no Chromium, nor a browser made from it, was found; install one, or let PLAINWORK_CHROMIUM name its file";
  }
  const failed = reports.filter((report) => report.notPrinted);
  const [first] = failed;
  if (!first) return undefined;
  const names = failed.map(({ name }) => name).join(", ");
  return `built, but not printed: ${names}: ${first.notPrinted}`;
}
