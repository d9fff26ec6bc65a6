/// <reference types="handlebars" />
/** What the build puts in: chapters compiled from templates/, the page's script and style with their checksums. */
declare module "plainwork:templates" {
  /** Chapter name -> its template's tree, read when the program was built. */
  const templates: Readonly<Record<string, import("./template/tree.ts").Template>>;
  export default templates;
}
declare module "plainwork:shapes" {
  /** Chapter name -> its shape, compiled when the program was built. */
  const shapes: Readonly<Record<string, import("./shape/tree.ts").Shape>>;
  export default shapes;
}
declare module "plainwork:page" {
  export const script: string;
  export const style: string;
  /** What the pages of all sizes add to the style. */
  export const sizeStyle: string;
  /** `sha256-…` of script and style, for the page's Content-Security-Policy. */
  export const scriptHash: string;
  export const styleHash: string;
  /** The core that works everything out again in the page: packed (raw deflate, base64), and the checksum of its text. */
  export const core: string;
  export const coreHash: string;
  /** The standard chapters' shapes as JSON, packed likewise. */
  export const chapters: string;
  /** A style for each paper that the program prints on by itself; none is at work until its `media` says so. */
  export const papers: readonly { readonly name: string; readonly style: string; readonly hash: string }[];
}
declare module "plainwork:catalogue" {
  /** What runs in the catalogue, its style, and the checksum of each for its Content-Security-Policy. */
  export const script: string;
  export const style: string;
  export const scriptHash: string;
  export const styleHash: string;
}
declare module "plainwork:sheets" {
  /** Sheet name -> its shape. */
  export const shapes: Readonly<Record<string, import("./shape/tree.ts").Shape>>;
  export const style: string;
  export const styleHash: string;
}
declare module "plainwork:version" {
  const version: string;
  export default version;
}
declare module "handlebars/dist/cjs/handlebars/compiler/base.js" {
  /** Handlebars' own parser, without its compiler. */
  export function parse(text: string): hbs.AST.Program;
}
