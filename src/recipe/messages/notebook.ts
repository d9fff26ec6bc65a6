/** What can be said while writing a notebook or a wording. */
import type { Said } from "./said.ts";

export const NOTEBOOK = {
  "bad-name": {
    means: "This cannot be the name of a value.",
    do: "Begin with a small letter; join words by dots.",
  },
  "cautions-left-out": {
    levels: ["warning", "error"],
    means: "A warning or a caution of the standard booklet is left out.",
    do: "Put it before its step; the general cautions stand in front all the same.",
  },
  "chapter-does-not-apply": {
    levels: ["note"],
    means: "This garment does not have this chapter, and it is left out.",
    do: "Nothing has to be done.",
  },
  "chapter-in-chapter": { means: "A chapter cannot be put into another.", do: "Name it in recipe.md." },
  "chapter-order": {
    levels: ["note"],
    means: "A chapter stands before one whose work comes first.",
    do: "Put the two the other way round, or leave it, if it is only to be read so.",
  },
  "chapter-place": { means: "A chapter's tag stands among other text.", do: "Put it on a line of its own." },
  "chapter-title": {
    means: "A wording of a chapter has no title, or several.",
    do: "Give it one line that begins with ##.",
  },
  "chapter-twice": { means: "A chapter is put in twice.", do: "Keep one of the two." },
  circle: {
    means: "Values are worked out from each other in a circle.",
    do: "Work one of them out from something else.",
  },
  crossed: {
    means: "Choices or lists cut through a paragraph, an item or a row.",
    do: "Put their tags on lines of their own, round whole paragraphs.",
  },
  "figure-place": { means: "A figure's tag stands among other text.", do: "Put it on a line of its own." },
  formula: {
    means: "A formula cannot be read.",
    do: "Use names, numbers with their unit, + - * / and brackets.",
  },
  heading: {
    means: "A heading stands that a notebook cannot have.",
    do: "Write ## for a section and ### inside one; leave a line empty above a rule.",
  },
  helper: {
    means: "A helper in curly brackets is given what it cannot take.",
    do: "Write it like the example in the message.",
  },
  html: { means: "HTML cannot be used.", do: "Write Markdown; a bare < is written \\<." },
  kind: {
    means:
      "A formula puts together what cannot be, as a length and a number, or comes to nothing that is printed.",
    do: "Check the units.",
  },
  link: {
    means: "A link leads to an address that cannot be linked to.",
    do: "Link to https: or mailto:, or to a chapter.",
  },
  "name-taken": {
    means: "The program has a value of this name, or one name begins the other.",
    do: "Take another name.",
  },
  "name-twice": { means: "Two lines of workings have one name.", do: "Give one of them another." },
  "no-chapters": {
    levels: ["warning"],
    means: "No standard chapter is named: the booklet holds your own text and the cautions only.",
    do: "Write {{> the-rest}} where the chapters should stand.",
  },
  "no-figure": {
    means: "This garment does not have this figure or guide.",
    do: "Take it out, or put it inside an #if.",
  },
  "no-photograph": {
    means: "The photograph's file is not there.",
    do: "Put it there, or take the picture out.",
  },
  "no-value": {
    means: "This garment does not have this value.",
    do: "Take it out, or print it inside an #if.",
  },
  "no-words": {
    means: "A photograph has no words for those who cannot see it.",
    do: "Write what it shows between the square brackets.",
  },
  "not-a-list": { means: "Only a list can be gone through, and this is none.", do: "Take a list's name." },
  "not-printable": {
    means: "A list, a block or a yes-or-no cannot be printed.",
    do: "Go through the list, ask for the yes-or-no, or write the rest of the name.",
  },
  "open-workings": {
    means: "A block of workings does not end.",
    do: "End it with a line that holds only ```.",
  },
  photograph: {
    means: "A picture does not lie in photos/ beside the recipe, or is not written as one.",
    do: "Save it there, and write ![what it shows](photos/its-name.jpg).",
  },
  "photograph-kind": {
    means: "The file is no png, jpeg or webp picture, whatever its name says.",
    do: "Save it as one of these.",
  },
  "photograph-size": {
    means: "A photograph, or all together, are larger than is read.",
    do: "Save them smaller: 1200 dots on the longer side are enough.",
  },
  template: {
    means: "A tag in curly brackets cannot be read, or is not closed.",
    do: "Write it as the message shows.",
  },
  "too-much": { means: "Lists inside lists make more text than is printed.", do: "Take a list out." },
  "unknown-chapter": { means: "No chapter has this name.", do: "Take the name that is offered." },
  "unknown-figure": { means: "No figure has this name.", do: "Take the name that is offered." },
  "unknown-helper": { means: "No helper has this name.", do: "Take the name that is offered." },
  "unknown-word": {
    means: "The chapter of words does not tell this word.",
    do: "Take the name that is offered, write the word plainly, or tell it in a words.md of your own.",
  },
  "unknown-name": {
    means: "No value has this name.",
    do: "Take the name that is offered, or look it up in the reference.",
  },
  "workings-line": {
    means: "A line of workings, or their block, is not as it must be.",
    do: "Write name = formula, in a block that begins at the left margin of recipe.md.",
  },
} as const satisfies Readonly<Record<string, Said>>;
