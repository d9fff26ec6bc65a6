/** Opens an address in the maker's own browser. That it cannot be opened is no fault: the link is printed. */
import { spawn } from "node:child_process";

const PROGRAMS: Readonly<Record<string, readonly [program: string, ...words: string[]]>> = {
  darwin: ["open"],
  win32: ["rundll32", "url.dll,FileProtocolHandler"],
};

export function openBrowser(address: string, platform: string): void {
  const [program, ...words] = PROGRAMS[platform] ?? ["xdg-open"];
  try {
    const child = spawn(program as string, [...words, address], {
      stdio: "ignore",
      detached: true,
      windowsHide: true,
    });
    child.on("error", () => {});
    child.unref();
  } catch {
    // The link is printed.
  }
}
