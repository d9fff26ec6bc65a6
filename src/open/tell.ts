/** Tells the open pages what happened, as server-sent events. */
import type { IncomingMessage, ServerResponse } from "node:http";
import { plainHeaders } from "./headers.ts";

/** More windows than anyone has. */
const MOST = 20;
/** A sign of life, so that a page notices a server that is gone without a word. */
const EVERY = 5000;

export class Listeners {
  private readonly answers = new Set<ServerResponse>();
  private readonly timer = setInterval(() => this.tell("alive", {}), EVERY);

  /** Keeps a connection open; the one that has listened longest gives way when there are too many. */
  add(asked: IncomingMessage, answer: ServerResponse): void {
    const [oldest] = this.answers;
    if (this.answers.size >= MOST && oldest) this.drop(oldest);
    answer.writeHead(200, plainHeaders("text/event-stream; charset=utf-8"));
    answer.write("retry: 1000\nevent: alive\ndata: {}\n\n");
    this.answers.add(answer);
    asked.on("close", () => this.answers.delete(answer));
  }

  tell(event: string, data: unknown): void {
    for (const answer of this.answers) answer.write(`event: ${event}\ndata: ${JSON.stringify(data)}\n\n`);
  }

  close(): void {
    clearInterval(this.timer);
    for (const answer of this.answers) this.drop(answer);
  }

  private drop(answer: ServerResponse): void {
    this.answers.delete(answer);
    answer.end();
  }
}
