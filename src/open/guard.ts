/** Who may ask: only the page that this start gave its address to, from this machine, and nothing else on the net or in the browser. */
import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import type { IncomingHttpHeaders } from "node:http";

/** 192 bits, new at every start. */
export const newSecret = (): string => randomBytes(24).toString("base64url");

export interface Asked {
  readonly method: string;
  readonly url: string;
  readonly headers: IncomingHttpHeaders;
}

export type Verdict = { readonly path: string } | { readonly refused: number; readonly why: string };

/** Longer addresses are none of ours. */
const LONGEST_URL = 500;

const digest = (text: string): Buffer => createHash("sha256").update(text).digest();
const isSame = (a: string, b: string): boolean => timingSafeEqual(digest(a), digest(b));

const STALE =
  "This address is not known here: it is incomplete, or belongs to an earlier start. Open the link that plainwork open printed last.";

/** Where a request leads, behind the secret; or why it is refused. Tells nothing of what there is. */
export function judge({ method, url, headers }: Asked, port: number, secret: string): Verdict {
  const refused = (status: number, why: string): Verdict => ({ refused: status, why });
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`];
  const { host, origin } = headers;
  // A page elsewhere whose name was made to lead here asks under its own name.
  if (host === undefined || !hosts.includes(host))
    return refused(421, "This is not the address of this page.");
  const isOurs = origin === `http://${host}`;
  if (origin !== undefined && !isOurs) return refused(403, "Other pages may ask nothing here.");
  const site = headers["sec-fetch-site"];
  if (site !== undefined && site !== "same-origin" && site !== "none")
    return refused(403, "Other pages may ask nothing here.");
  if (method !== "GET" && method !== "PUT") return refused(405, "Only GET and PUT are answered here.");
  if (url.length > LONGEST_URL) return refused(414, "This address is too long.");
  const [, first = "", ...rest] = (url.split("?")[0] ?? "").split("/");
  if (!isSame(first, secret)) return refused(404, STALE);
  // Browsers send their page's origin with everything that writes; what sends none is no page of ours.
  if (method === "PUT" && !isOurs) return refused(403, "Only the page itself may write.");
  const path = rest.join("/");
  if (!/^[\w./-]*$/.test(path) || path.split("/").some((step) => step === ".."))
    return refused(404, "There is no such thing here.");
  if (site === "none" && path !== "") return refused(403, "Only the page itself may ask for this.");
  return { path };
}
