/** What a built page must not have, found by reading it as a browser does: scripts that are not ours, handlers, addresses that run. */
import { script as catalogueScript } from "plainwork:catalogue";
import { chapters, core, script } from "plainwork:page";
import { type DefaultTreeAdapterTypes, parse } from "parse5";

type Node = DefaultTreeAdapterTypes.Node;
type Element = DefaultTreeAdapterTypes.Element;

/** Our scripts, by what stands in them and not by where they stand. */
const OURS = new Set([script, catalogueScript]);
const PACKED = new Set([core, chapters]);

const FORBIDDEN = new Set([
  "iframe",
  "object",
  "embed",
  "base",
  "frame",
  "applet",
  "foreignObject",
  "use",
  "animate",
  "set",
]);
const ADDRESSES = new Set([
  "href",
  "src",
  "xlink:href",
  "action",
  "formaction",
  "srcset",
  "poster",
  "data",
  "ping",
  "background",
]);

/** An address with what a browser passes over taken out. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: browsers pass over just these
const bare = (address: string): string => address.replace(/[\u0000-\u0020\u007f-\u00a0]/g, "").toLowerCase();

const textOf = (element: Element): string =>
  element.childNodes.map((node) => ("value" in node ? node.value : "")).join("");

function scriptFault(element: Element): string | undefined {
  const type = element.attrs.find(({ name }) => name === "type")?.value;
  const text = textOf(element);
  if (type === undefined)
    return OURS.has(text) ? undefined : `a script that is not ours: ${text.slice(0, 80)}`;
  if (type === "text/plain") {
    const isNumbers = element.attrs.some(({ name, value }) => name === "id" && value === "numbers");
    return PACKED.has(text) || isNumbers ? undefined : `a packed text that is not ours: ${text.slice(0, 80)}`;
  }
  if (type !== "application/json" && type !== "application/ld+json") return `a script of type ${type}`;
  try {
    JSON.parse(text);
    return undefined;
  } catch {
    return `data that cannot be read: ${text.slice(0, 80)}`;
  }
}

function addressFault(tag: string, name: string, value: string): string | undefined {
  const address = bare(value);
  const scheme = /^([a-z][a-z0-9+.-]*):/.exec(address)?.[1];
  if (scheme === undefined)
    return address.startsWith("//") ? `${tag} ${name} leads elsewhere: ${value}` : undefined;
  if (tag === "img" && name === "src") {
    return /^data:image\/(?:png|jpeg|webp);base64,[a-z0-9+/=]*$/.test(address)
      ? undefined
      : `a picture from ${value.slice(0, 80)}`;
  }
  return tag === "a" && name === "href" && ["http", "https", "mailto"].includes(scheme)
    ? undefined
    : `${tag} ${name}=${value.slice(0, 80)}`;
}

function faultsOf(element: Element): string[] {
  const { tagName, attrs } = element;
  const faults: string[] = [];
  if (FORBIDDEN.has(tagName)) faults.push(`there is an element ${tagName}`);
  if (tagName === "script") faults.push(...[scriptFault(element) ?? []].flat());
  if (
    tagName === "meta" &&
    attrs.some(({ name, value }) => name === "http-equiv" && value !== "Content-Security-Policy")
  )
    faults.push("a meta element that is not ours");
  for (const { name, value } of attrs) {
    if (/^on/i.test(name)) faults.push(`a handler ${name}`);
    if (ADDRESSES.has(name)) faults.push(...[addressFault(tagName, name, value) ?? []].flat());
    if (name === "style") faults.push(`a style of its own: ${value.slice(0, 80)}`);
  }
  return faults;
}

/** Everything of that kind in a page, or in a drawing's file. */
export function pageFaults(html: string): string[] {
  const faults: string[] = [];
  const waiting: Node[] = [parse(html)];
  for (let node = waiting.pop(); node; node = waiting.pop()) {
    if ("tagName" in node) faults.push(...faultsOf(node));
    if ("content" in node) waiting.push(node.content);
    if ("childNodes" in node) waiting.push(...node.childNodes);
  }
  return faults;
}
