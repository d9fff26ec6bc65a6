/**
 * Finds what the browser and print tests need, Chromium and poppler, or installs them with Debian's own installer when
 * it may. Says plainly what is missing where it cannot.
 */
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";

const CHROMIUM = [
  process.env.CHROMIUM,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
].filter(Boolean);

const found = (command) => spawnSync("sh", ["-c", `command -v ${command}`]).status === 0;
const chromium = () => CHROMIUM.some((path) => existsSync(path));
const poppler = () => found("pdftoppm") && found("pdftotext");

const missing = () => [...(chromium() ? [] : ["chromium"]), ...(poppler() ? [] : ["poppler-utils"])];

const wanted = missing();
if (wanted.length > 0) {
  const root = process.getuid?.() === 0;
  if (root && found("apt-get")) {
    console.log(`installing for the tests: ${wanted.join(", ")}`);
    spawnSync("apt-get", ["update", "-qq"], { stdio: ["ignore", "ignore", "inherit"] });
    spawnSync(
      "apt-get",
      ["install", "-y", "-qq", "--no-install-recommends", "fonts-dejavu-core", ...wanted],
      {
        stdio: ["ignore", "ignore", "inherit"],
        env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
      },
    );
  }
  const still = missing();
  if (still.length > 0) {
    console.error(`The tests need ${still.join(" and ")}, and could not install them here.
  On Debian or Ubuntu: sudo apt-get install ${still.join(" ")}
  Elsewhere: install Chromium and poppler, and set CHROMIUM to the browser's path if it is not in /usr/bin.`);
    process.exit(1);
  }
}
