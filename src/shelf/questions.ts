/** The few measures that a new recipe needs, as questions on a terminal and as options. */

export interface Question {
  /** The option's name, without its dashes. */
  readonly option: string;
  /** The recipe's key that the answer goes to. */
  readonly path: string;
  readonly asks: string;
  /** May be left out; nothing is written then. */
  readonly optional?: true;
  /** Given in place of this one. */
  readonly instead?: { readonly option: string; readonly path: string; readonly asks: string };
}

export const QUESTIONS: readonly Question[] = [
  { option: "title", path: "title", asks: "What is the garment called?" },
  { option: "garment", path: "garment", asks: "A skirt or a petticoat? (skirt)", optional: true },
  { option: "year", path: "year", asks: "Which year is it made after? (none)", optional: true },
  { option: "show", path: "show", asks: "Print in inches or centimetres, in or cm? (in)", optional: true },
  {
    option: "waist",
    path: "wearer.waist",
    asks: "Waist, over everything worn beneath, closed as it will be worn, as 27 in:",
  },
  {
    option: "front",
    path: "wearer.waist-to-floor.front",
    asks: "Waist to floor at centre front, over all supports, in the shoes, as 40 in:",
  },
  { option: "side", path: "wearer.waist-to-floor.side", asks: "The same at the sides, as 41 in:" },
  { option: "back", path: "wearer.waist-to-floor.back", asks: "The same at centre back, as 42 1/2 in:" },
  { option: "width", path: "cloth.width", asks: "Width of the cloth, selvedge to selvedge, as 44 in:" },
  {
    option: "thickness",
    path: "cloth.thickness",
    asks: "Thickness of one layer, as 0.25 mm, or nothing to give ten layers:",
    instead: {
      option: "ten-layers",
      path: "cloth.ten-layers",
      asks: "Thickness of ten layers, measured under a book, as 2.5 mm:",
    },
  },
  {
    option: "breadths",
    path: "skirt.breadths",
    asks: "How many breadths of cloth, halves allowed, as 4 or 3 1/2, or nothing to give a round:",
    instead: { option: "round", path: "skirt.round", asks: "The round you wish for, as 165 in:" },
  },
];
