/** What can be said while writing the file. */
import type { Said } from "./said.ts";

export const TEXT = {
  alias: {
    means: "A value begins with a star, which would make it stand for another value.",
    do: "Write the value itself; put a text that begins with a star in quotes.",
  },
  anchor: {
    means: "A value begins with an ampersand, which would give it a name.",
    do: "Leave the name out; put a text that begins with an ampersand in quotes.",
  },
  "duplicate-key": { means: "The same key stands twice in one block.", do: "Keep one of the two." },
  empty: { means: "A key is written and nothing after it.", do: "Write its value, or take the key out." },
  "empty-file": { means: "The file has nothing in it.", do: "Begin it with a line ---, then recipe: 1." },
  "empty-front-matter": {
    means: "There is nothing between the two lines ---.",
    do: "Write the measures there, or copy a recipe to begin with.",
  },
  "forbidden-key": { means: "This word cannot be a key.", do: "Take it out." },
  "key-kind": {
    means: "A list or a block stands where a key must.",
    do: "Write the key in words, then a colon.",
  },
  "long-line": { means: "One line is longer than is read.", do: "Break it into several." },
  "merge-key": {
    means: "The key << would bring another block in.",
    do: "Write the keys of that block themselves.",
  },
  missing: { means: "Something that must be given is not.", do: "Write the line that the message shows." },
  "no-front-matter": {
    means: "The file does not begin with the line --- that its measures stand under.",
    do: "Put the measures on top, between two lines that hold only ---.",
  },
  "no-key": {
    means: "A colon has no key before it.",
    do: "Write what the value is for, or take the colon out.",
  },
  "not-text": { means: "The file is not plain text in UTF-8.", do: "Save it anew as plain text, UTF-8." },
  "older-format": {
    levels: ["note"],
    means: "The recipe is written in an older format, and was read as one of today.",
    do: "Nothing has to be done; write it the new way when you next change it.",
  },
  "open-front-matter": {
    means: "The measures begin, and no second line --- ends them.",
    do: "Write --- on a line of its own after the last measure.",
  },
  outside: {
    means: "A file of the project is a link that leads out of its folder.",
    do: "Put the file itself there.",
  },
  "recipe-version": {
    means: "The number after recipe: is not a format that this program reads.",
    do: "Write recipe: 1; a recipe of a newer format needs a newer program.",
  },
  "several-documents": {
    means: "A second block of measures begins inside the first.",
    do: "Keep one, with no line of --- or ... inside it.",
  },
  tag: {
    means: "A value begins with an exclamation mark, which would set its type.",
    do: "Leave it out; put a text that begins with an exclamation mark in quotes.",
  },
  "too-deep": {
    means: "Blocks, lists, quotes or brackets stand inside each other more deeply than is read.",
    do: "Take a level out.",
  },
  "too-large": {
    means: "The file is larger than is read.",
    do: "Keep pictures in photos/, and older entries in another file.",
  },
  "too-long": { means: "The text, or a value in it, is longer than is read.", do: "Make it shorter." },
  "too-many": {
    means: "There are more keys, lines, rows, marks or pictures than are read.",
    do: "Leave some out, or make two projects of it.",
  },
  "unknown-key": {
    means: "No key of this name can stand here.",
    do: "Take the name that is offered, or take the line out.",
  },
  "wrong-kind": {
    means: "One value stands where a list or a block must, or the other way round.",
    do: "Write it in the form that the message expects.",
  },
  yaml: {
    means:
      "The measures on top of the file are not well formed: a quote, a bracket, a colon or an indent is wrong.",
    do: "Mend the place that is shown, or the line above it.",
  },
} as const satisfies Readonly<Record<string, Said>>;
