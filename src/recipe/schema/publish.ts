/** What is made for others to use, beside the booklet itself. */
import { block, optional } from "../blocks.ts";
import { flag } from "../fields.ts";

export const PUBLISH = block("what is published beside the booklet", {
  "measure-your-own": optional(
    flag({
      about:
        "a page that asks a reader for her own measures and gives her own booklet; with sizes it is made unless this is false",
    }),
  ),
  commission: optional(
    flag({
      about: "a commission sheet on one page; made unless this is false where `commission` is written",
    }),
  ),
  class: optional(
    flag({ about: "a class sheet on one page; made unless this is false where `class` is written" }),
  ),
});
