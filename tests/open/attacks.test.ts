/** The page's server answers its own page and no one else; each attack is a row. */
import { mkdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { networkInterfaces } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Opened } from "../../src/open/server.ts";
import attacks from "./attacks.json" with { type: "json" };
import { type Copy, copyOf, openHere } from "./opened.ts";

interface Attack {
  readonly what: string;
  readonly method: string;
  readonly path: string;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: unknown;
  readonly status: number;
}

let copy: Copy;
let opened: Opened;
let before: string;
let checksum: string;

beforeAll(async () => {
  copy = copyOf("madder-print-1851");
  writeFileSync(join(copy.folder, "notes.txt"), "private");
  writeFileSync(join(copy.folder, "photos/notes.txt"), "private");
  mkdirSync(`${copy.folder}-out`);
  writeFileSync(join(`${copy.folder}-out`, "secret.png"), "private");
  symlinkSync(join(`${copy.folder}-out`, "secret.png"), join(copy.folder, "photos/out.png"));
  before = copy.read();
  opened = await openHere(copy);
  const answer = await fetch(`${opened.address}project`);
  checksum = ((await answer.json()) as { recipe: { checksum: string } }).recipe.checksum;
});

afterAll(async () => {
  await opened?.close();
  copy?.remove();
  rmSync(`${copy?.folder}-out`, { recursive: true, force: true });
});

const filled = (text: string): string => {
  const secret = new URL(opened.address).pathname.slice(1, -1);
  const values: Record<string, string> = {
    secret,
    half: secret.slice(0, 16),
    port: String(opened.port),
    origin: `http://127.0.0.1:${opened.port}`,
    checksum,
    large: "x".repeat(1024 * 1024 + 1),
    long: "x".repeat(2000),
  };
  return text.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
};

function send({
  method,
  path,
  headers = {},
  body,
}: Attack): Promise<{ status: number; text: string; headers: Record<string, unknown> }> {
  return new Promise((done, failed) => {
    const sent = body === undefined ? "" : filled(typeof body === "string" ? body : JSON.stringify(body));
    const asked = request(
      {
        host: "127.0.0.1",
        port: opened.port,
        method,
        path: filled(path),
        headers: Object.fromEntries(Object.entries(headers).map(([name, value]) => [name, filled(value)])),
      },
      (answer) => {
        let text = "";
        answer.on("data", (chunk) => {
          text += chunk;
        });
        answer.on("end", () => done({ status: answer.statusCode ?? 0, text, headers: answer.headers }));
      },
    );
    asked.on("error", (error: NodeJS.ErrnoException) => {
      // The answer may have come before all was sent.
      if (error.code !== "EPIPE" && error.code !== "ECONNRESET") failed(error);
    });
    asked.write(sent);
    if (headers["Content-Length"] === undefined) asked.end();
  });
}

describe("the page's server", () => {
  it.each(attacks as readonly Attack[])("$what: $status", async (attack) => {
    const answer = await send(attack);
    expect(answer.status).toBe(attack.status);
    expect(answer.headers).toMatchObject({
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
      "cross-origin-resource-policy": "same-origin",
    });
    expect(answer.headers["access-control-allow-origin"]).toBeUndefined();
    expect(String(answer.headers["content-security-policy"])).toMatch(/^default-src 'none'(?!.*unsafe)/);
    if (attack.status >= 400) expect(answer.text).not.toMatch(/private|<|waist/);
    expect(copy.read()).toBe(before);
  });

  it("listens on this machine only", async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((one) => one ?? [])
      .filter(({ internal, family }) => !internal && family === "IPv4");
    for (const { address } of others) {
      await expect(fetch(`http://${address}:${opened.port}/`)).rejects.toThrow();
    }
    expect(new URL(opened.address).hostname).toBe("127.0.0.1");
  });

  it("has another secret at every start, long enough", async () => {
    const other = await openHere(copy);
    const [a, b] = [opened.address, other.address].map((one) => new URL(one).pathname);
    await other.close();
    expect(a).not.toBe(b);
    expect(a?.length).toBeGreaterThanOrEqual(2 + 128 / 6);
  });

  it("lets no page frame it, and makes a new nonce for every answer", async () => {
    const policies = await Promise.all(
      [1, 2].map(async () => (await fetch(opened.address)).headers.get("content-security-policy") ?? ""),
    );
    expect(policies[0]).toContain("frame-ancestors 'none'");
    expect(policies[0]).not.toBe(policies[1]);
  });
});
