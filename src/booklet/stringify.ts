/** HTML nodes as text. Not in the page: there the nodes become the document's own. */
import type { ElementContent } from "hast";
import rehypeStringify from "rehype-stringify";
import { unified } from "unified";

const stringifier = unified().use(rehypeStringify).freeze();

/** HTML text of nodes. */
export function nodesToHtml(children: readonly ElementContent[]): string {
  return stringifier.stringify({ type: "root", children: [...children] });
}
