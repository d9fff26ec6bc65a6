/** Bytes as base64, in Node and in the browser alike. */

const LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

export function base64(bytes: Uint8Array): string {
  const text: string[] = [];
  for (let at = 0; at < bytes.length; at += 3) {
    const [a = 0, b = 0, c = 0] = bytes.subarray(at, at + 3);
    const left = bytes.length - at;
    text.push(
      LETTERS[a >> 2] as string,
      LETTERS[((a & 3) << 4) | (b >> 4)] as string,
      left > 1 ? (LETTERS[((b & 15) << 2) | (c >> 6)] as string) : "=",
      left > 2 ? (LETTERS[c & 63] as string) : "=",
    );
  }
  return text.join("");
}
