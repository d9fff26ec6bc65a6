/** Times spent, exactly: `1 h 20 min`, `45 min 30 s`, `-10 min`. */
import { fraction, type Quantity, quantity, TIME } from "../../quantity/quantity.ts";

const SPAN = /^([-−]?) ?(?:(\d{1,5}) ?h)? ?(?:(\d{1,6}) ?min)? ?(?:(\d{1,8}) ?s)?$/;

/** A time as it is written; undefined when it is none. */
export function readSpan(text: string): Quantity | undefined {
  const found = SPAN.exec(text.trim());
  if (!found?.slice(2).some((part) => part !== undefined)) return undefined;
  const [, sign, h = "0", min = "0", s = "0"] = found;
  const seconds = BigInt(h) * 3600n + BigInt(min) * 60n + BigInt(s);
  return quantity(fraction(sign ? -seconds : seconds), TIME);
}

/** Whole seconds as a time that `readSpan` reads. */
export function spanText(seconds: number): string {
  const all = Math.abs(Math.round(seconds));
  const parts = [
    [Math.floor(all / 3600), "h"],
    [Math.floor(all / 60) % 60, "min"],
    [all % 60, "s"],
  ] as const;
  const words = parts.filter(([n]) => n > 0).map(([n, unit]) => `${n} ${unit}`);
  return `${seconds < 0 ? "-" : ""}${words.join(" ") || "0 min"}`;
}
