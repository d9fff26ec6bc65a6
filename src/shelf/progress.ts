/** How far long work has come: a bar on a terminal, a line now and then elsewhere. */

/** Where it is told, and how time goes. */
export interface ProgressWays {
  write(text: string): void;
  readonly terminal: boolean;
  /** Milliseconds since whenever. */
  now(): number;
}

const BAR = 24;
/** A bar is drawn anew at most so often; a line is written so seldom. In milliseconds. */
const REDRAW = 100;
const LINES = 10_000;

export class Progress {
  private readonly ways: ProgressWays;
  private readonly total: number;
  private readonly began: number;
  private last: number;
  private isDrawn = false;

  /** @param total how many there are to do */
  constructor(ways: ProgressWays, total: number) {
    this.ways = ways;
    this.total = total;
    this.began = ways.now();
    this.last = ways.terminal ? Number.NEGATIVE_INFINITY : this.began;
  }

  /** So many are done, and this is the one that was done last. */
  done(count: number, name: string): void {
    const now = this.ways.now();
    const { terminal, write } = this.ways;
    if (count === this.total || now - this.last < (terminal ? REDRAW : LINES)) return;
    this.last = now;
    const told = `${count} of ${this.total}, ${leftWords(((now - this.began) / count) * (this.total - count))}`;
    if (!terminal) {
      write(`${told}\n`);
      return;
    }
    const full = Math.floor((BAR * count) / this.total);
    this.isDrawn = true;
    write(`\r\x1b[K[${"=".repeat(full)}${" ".repeat(BAR - full)}] ${told}: ${name}`);
  }

  /** Takes the bar away, so that a line can be written. */
  clear(): void {
    if (this.isDrawn) this.ways.write("\r\x1b[K");
    this.isDrawn = false;
  }
}

/** A time in words that are no more exact than an estimate is. */
function leftWords(milliseconds: number): string {
  const seconds = Math.round(milliseconds / 1000);
  if (seconds < 5) return "a few seconds left";
  if (seconds < 90) return `about ${Math.ceil(seconds / 5) * 5} seconds left`;
  return `about ${Math.round(seconds / 60)} minutes left`;
}
