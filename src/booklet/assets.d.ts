/** What the build puts in: chapters compiled from templates/, the page's script and style with their checksums. */
declare module "plainwork:templates" {
  /** Chapter name -> Handlebars template specification, compiled when the program was built. */
  const templates: Readonly<Record<string, unknown>>;
  export default templates;
}
declare module "plainwork:page" {
  export const script: string;
  export const style: string;
  /** `sha256-…` of script and style, for the page's Content-Security-Policy. */
  export const scriptHash: string;
  export const styleHash: string;
}
declare module "plainwork:version" {
  const version: string;
  export default version;
}
declare module "handlebars/runtime" {
  export { default } from "handlebars";
}
