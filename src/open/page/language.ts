/** How a recipe is coloured: measures above, notebook below, tags and workings in it. Never by colour alone: weight and slant say the same. */
import { commonmarkLanguage, markdownKeymap } from "@codemirror/lang-markdown";
import { yamlFrontmatter } from "@codemirror/lang-yaml";
import { HighlightStyle, LanguageSupport, syntaxHighlighting } from "@codemirror/language";
import type { Extension } from "@codemirror/state";
import {
  Decoration,
  type DecorationSet,
  type EditorView,
  keymap,
  MatchDecorator,
  ViewPlugin,
  type ViewUpdate,
} from "@codemirror/view";
import { tags } from "@lezer/highlight";

const STYLE = HighlightStyle.define([
  { tag: tags.definition(tags.propertyName), class: "t-key" },
  { tag: tags.propertyName, class: "t-key" },
  { tag: tags.heading, class: "t-heading" },
  { tag: tags.strong, class: "t-strong" },
  { tag: tags.emphasis, class: "t-emphasis" },
  { tag: tags.comment, class: "t-remark" },
  { tag: tags.lineComment, class: "t-remark" },
  { tag: tags.monospace, class: "t-code" },
  { tag: tags.string, class: "t-value" },
  { tag: tags.url, class: "t-path" },
  { tag: tags.quote, class: "t-quote" },
  { tag: tags.processingInstruction, class: "t-mark" },
  { tag: tags.meta, class: "t-mark" },
  { tag: tags.separator, class: "t-mark" },
]);

/** Tags in two braces. */
function handlebars() {
  const matcher = new MatchDecorator({
    regexp: /\{\{[^{}\n]*\}\}/g,
    decoration: ([tag]) =>
      Decoration.mark({ class: /^\{\{[#/>]|^\{\{else/.test(tag) ? "t-tag t-turn" : "t-tag" }),
  });
  return ViewPlugin.fromClass(
    class {
      decorations: DecorationSet;
      constructor(view: EditorView) {
        this.decorations = matcher.createDeco(view);
      }
      update(update: ViewUpdate): void {
        this.decorations = matcher.updateDeco(update, this.decorations);
      }
    },
    { decorations: (plugin) => plugin.decorations },
  );
}

/** Everything that colours a recipe; Enter goes on with a list. */
export const recipeLanguage = (): Extension => [
  yamlFrontmatter({ content: new LanguageSupport(commonmarkLanguage) }),
  keymap.of([...markdownKeymap]),
  syntaxHighlighting(STYLE),
  handlebars(),
];
