/** What goes with every answer: nothing is stored, framed, sniffed, shared or told on. */
import { randomBytes } from "node:crypto";

export const newNonce = (): string => randomBytes(18).toString("base64");

const ALWAYS: Readonly<Record<string, string>> = {
  "Cache-Control": "no-store",
  "X-Content-Type-Options": "nosniff",
  "Referrer-Policy": "no-referrer",
  "Cross-Origin-Resource-Policy": "same-origin",
  "Cross-Origin-Opener-Policy": "same-origin",
  "Permissions-Policy": "camera=(), microphone=(), geolocation=()",
};

const NOTHING = "default-src 'none'; base-uri 'none'; form-action 'none'";

/** For everything that is no page. */
export const plainHeaders = (type: string): Record<string, string> => ({
  ...ALWAYS,
  "Content-Type": type,
  "Content-Security-Policy": `${NOTHING}; frame-ancestors 'none'`,
});

/**
 * For a page: its own scripts and styles by this nonce, and nothing evaluated from text. The editor makes its style sheets
 * itself and gives them the nonce.
 *
 * @param framed may the page stand in a frame of our own page?
 */
export const pageHeaders = (nonce: string, framed: boolean): Record<string, string> => ({
  ...ALWAYS,
  "Content-Type": "text/html; charset=utf-8",
  "Content-Security-Policy": [
    NOTHING,
    `script-src 'nonce-${nonce}'`,
    `style-src 'nonce-${nonce}'`,
    "img-src data: blob: 'self'",
    "connect-src 'self'",
    "frame-src 'self'",
    `frame-ancestors ${framed ? "'self'" : "'none'"}`,
  ].join("; "),
});
