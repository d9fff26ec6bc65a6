/** The typed recipe: what recipe.md says, read, checked and with every default filled in. Lengths are exact. */
import type { Quantity } from "../quantity/quantity.ts";
import type { Recorded } from "./as-made/recorded.ts";
import type { Place } from "./message.ts";
import type { Block } from "./node.ts";

export type Fibre = "cotton" | "linen" | "wool" | "silk" | "mixed";

export interface WaistToFloor {
  readonly front: Quantity;
  /** The wearer's left and right; equal where the recipe gives one `side`. */
  readonly left: Quantity;
  readonly right: Quantity;
  readonly back: Quantity;
}

export interface Hoop {
  readonly round: Quantity;
  readonly height?: Quantity;
  /** Depth : width, 1 for round. */
  readonly shape: Quantity;
  readonly offset: Quantity;
}

export interface Wearer {
  readonly name?: string;
  readonly waist: Quantity;
  readonly ease: Quantity;
  readonly waistToFloor?: WaistToFloor;
  /** Did the recipe give left and right apart? */
  readonly unlikeSides: boolean;
  readonly waistHeight?: Quantity;
  readonly over?: string;
  readonly hoop?: Hoop;
}

export interface Cloth {
  readonly name: string;
  readonly fibre?: Fibre;
  readonly sheer: boolean;
  /** Nothing may be turned end for end. */
  readonly oneWay: boolean;
  /** Which way its colour passes from light to dark. */
  readonly shaded?: "across" | "along";
  /** Woven or printed along a selvedge, or along both. */
  readonly border?: Border;
  readonly width: Quantity;
  readonly selvedge: Quantity;
  /** One layer; from `thickness`, or a tenth of `ten-layers`. */
  readonly thickness?: Quantity;
  readonly weight?: Quantity;
  readonly repeat?: {
    readonly across?: Quantity;
    readonly down?: Quantity;
    /** Do the seams take so much that the pattern meets? */
    readonly match: boolean;
    readonly linesLost?: Quantity;
    /** From inside the left selvedge. */
    readonly dominant?: Quantity;
  };
  /** A share: 3 % is 3/100. */
  readonly shrinkage: Quantity;
}

export interface Border {
  readonly depth: Quantity;
  readonly edge: "one" | "both";
  readonly at: "hem";
  /** From the outer edge of the cloth to the border's lower edge. */
  readonly fromEdge: Quantity;
  /** Its lower edge above the finished hem; absent where all the ground below it is used. */
  readonly aboveHem?: Quantity;
}

/** What lies behind the cloth. */
interface Backing {
  readonly name: string;
  readonly width: Quantity;
  readonly selvedge: Quantity;
  /** One layer. */
  readonly thickness: Quantity;
  readonly weight?: Quantity;
  readonly shrinkage: Quantity;
}

export interface Lining extends Backing {
  /** In breadths of its own, or mounted on every breadth. */
  readonly kind: "hung" | "flat";
  readonly to: "fold" | "turned" | "separate";
}

export interface Interlining extends Backing {
  readonly to: "short" | "fold" | "turned";
}

export interface Hem {
  readonly kind: "faced" | "turned";
  readonly depth: Quantity;
  readonly cloth: "own" | "other";
  /** What a faced hem ends in, where the cloth runs along the body: a cut edge turned in, or the selvedge as it is. */
  readonly edge: "cut" | "selvedge";
}

export interface Tucks {
  readonly count: Quantity;
  readonly depth: Quantity;
}

export interface Flounces {
  readonly count: Quantity;
  readonly depth: Quantity;
  readonly fullness: Quantity;
  readonly cut: "straight" | "cross";
}

export interface Skirt {
  /** Down the body from waist to hem, or along it, round the wearer. */
  readonly run: "down" | "along";
  /** Lengths joined into the round, where the cloth runs along. */
  readonly lengths?: Quantity;
  /** Whole or half; absent when `round` is given. */
  readonly breadths?: Quantity;
  readonly round?: Quantity;
  readonly centreFront?: "seam" | "breadth";
  readonly seam: Quantity;
  readonly offFloor: Quantity;
  readonly hem: Hem;
  readonly braid: boolean;
  readonly turnDown?: Quantity;
  readonly placket: Quantity;
  readonly pocket: boolean;
  readonly tucks?: Tucks;
  readonly flounces?: Flounces;
}

export type Method = "gauged" | "pleated" | "pleated-gauged-back" | "flat-front-gauged";

export interface Zone {
  readonly set: "flat" | "knife" | "box" | "double-box" | "gauged";
  readonly waist?: Quantity;
  readonly cloth?: Quantity;
  readonly face?: Quantity;
  readonly depth?: Quantity;
  readonly count?: Quantity;
  readonly towards?: "front" | "back";
}

export interface Trial {
  readonly cloth: Quantity;
  /** Whole or half pleats. */
  readonly pleats: Quantity;
  readonly closesTo: Quantity;
}

export interface Fullness {
  readonly method?: Method;
  readonly zones?: readonly Zone[];
  readonly gaugedBack: Quantity;
  readonly flatFront: Quantity;
  /** Of the gauged cloth, behind the sides; absent where it lies as evenly as the waist. */
  readonly backShare?: Quantity;
  readonly rows: number;
  readonly firstRow: Quantity;
  readonly betweenRows: Quantity;
  readonly pleatsPerInch?: Quantity;
  /** Just so many, not up to a tenth fewer. */
  readonly pleatsAsWished?: boolean;
  readonly finestBite: Quantity;
  readonly deepestPitch: Quantity;
  readonly followRepeat: boolean;
  readonly stay?: { readonly name?: string; readonly thickness: Quantity };
  readonly thread: "drawn-along" | "full-length";
  readonly strands: Quantity;
  readonly trial?: Trial;
}

export type OpeningPlace =
  | "centre-front"
  | "centre-back"
  | "side-left"
  | "side-right"
  | "front-left"
  | "front-right";

export interface Attach {
  readonly to: "waistband" | "bodice-edge" | "part-band";
  readonly made?: Quantity;
  readonly band: {
    readonly depth: Quantity;
    readonly lap: Quantity;
    readonly turning: Quantity;
    readonly from: "one-piece" | "faced";
    /** Further waists that the band hooks to. */
    readonly hookSets?: readonly { readonly waist: Quantity }[];
  };
  /** Other waist seams that the gauging is to serve, set again on another edge. */
  readonly otherWaists?: readonly { readonly waist: Quantity }[];
  /** A bodice edge that is not straight. */
  readonly waistEdge?: {
    readonly shape: "point";
    readonly depth: Quantity;
    readonly fromCentre: Quantity;
    /** Is the skirt set to the pointed edge, or to the straight waist within it? */
    readonly set: "edge" | "straight";
  };
  readonly piping?: { readonly cord: Quantity; readonly turning: Quantity };
  /** Absent: in the seam where turned down they would be too thick. */
  readonly flatParts?: "seam" | "whip";
  readonly whip: "every" | "every-other";
  readonly placketHooks: "one" | "all-along";
  readonly opening: {
    readonly at: OpeningPlace;
    readonly fromCentre?: Quantity;
    /** Asked for, or refused; absent, only a slit goes under a fold. */
    readonly underFold?: boolean;
  };
}

export interface Work {
  /** A minute each, as rates. */
  readonly rates: {
    readonly running?: Quantity;
    readonly marking?: Quantity;
    readonly gauging?: Quantity;
    readonly whip?: Quantity;
  };
  readonly price?: Price;
}

/** What the maker pays; what is not given is not counted. */
export interface Price {
  /** Money for a length. */
  readonly cloth?: Quantity;
  readonly lining?: Quantity;
  readonly interlining?: Quantity;
  /** All of them together. */
  readonly notions?: Quantity;
  /** Money for a time. */
  readonly hour?: Quantity;
  /** The three letters printed after every sum. */
  readonly currency?: string;
}

/** How an original's fullness is set to its waist. */
export type Setting = Method | "knife" | "box" | "double-box" | "gathered" | "flat" | "other";

/** One dated original. */
export interface EvidenceRow {
  readonly year: number;
  readonly fibre?: Fibre;
  readonly sheer?: boolean;
  readonly set: Setting;
  readonly seen?: string;
  readonly note?: string;
}

/** The maker's list of dated originals, and how it is counted. */
export interface Evidence {
  /** Years before and after. */
  readonly window: Quantity;
  readonly skipBadRows: boolean;
  /** Absent when there is no evidence.csv beside the recipe. */
  readonly rows?: readonly EvidenceRow[];
  readonly skipped: number;
}

/** One measure the recipe gives or a default fills in, by the recipe's own path (`skirt.hem.depth`). */
export interface Given {
  readonly path: string;
  readonly quantity: Quantity;
  readonly source: "recipe" | "default";
  /** As written in the recipe, or as the default is written. */
  readonly text: string;
}

/** The list of originals beside a recipe, as text. */
export interface EvidenceText {
  readonly file: string;
  readonly text: string;
}

/** One measure as it is written. */
export interface Field {
  readonly path: string;
  readonly text: string;
}

/** What client and maker agree on. */
export interface Commission {
  readonly use?: string;
  readonly brings?: string;
  readonly hemWithin: Quantity;
  readonly waistWithin: Quantity;
  readonly deposit?: Quantity;
}

/** A sampler for every pupil of a class. */
export interface Lesson {
  readonly pupils: Quantity;
  readonly sampler: Quantity;
}

export interface Recipe {
  /** Without the size; `wholeTitle` says it with it. */
  readonly title: string;
  /** The size's name, where this is one of a set. */
  readonly size?: string;
  readonly garment: "skirt" | "petticoat";
  readonly year?: number;
  readonly show: "in" | "cm";
  readonly tape: Quantity;
  readonly wearer: Wearer;
  readonly cloth: Cloth;
  readonly lining?: Lining;
  readonly interlining?: Interlining;
  readonly skirt: Skirt;
  readonly fullness: Fullness;
  readonly attach: Attach;
  readonly work: Work;
  /** Is a page wanted that asks for a reader's own measures? Absent when the recipe does not say. */
  readonly measureYourOwn?: boolean;
  /** A commission sheet is made; absent where none is asked for. */
  readonly commission?: Commission;
  /** A class sheet is made; absent where none is asked for. */
  readonly lesson?: Lesson;
  /** Absent when the recipe says nothing of it and there is no list. */
  readonly evidence?: Evidence;
  /** Every measure, in the order of the recipe reference, defaults included. */
  readonly given: readonly Given[];
  /** The measures that the recipe writes, as it writes them, under its own paths: what a page's fields start from. */
  readonly fields: readonly Field[];
  /** The front matter as it is written, and the list of originals: what a page works everything out from again. */
  readonly written: Block;
  readonly list?: EvidenceText;
  /** Work that was done: put in from beside the recipe by who reads a project. */
  readonly recorded?: Recorded;
  /** Choices that are not measures and were filled in by default: path and the word chosen. */
  readonly chosenByDefault: readonly { readonly path: string; readonly text: string }[];
  /** Places of the recipe's keys and values by path, for messages found later. */
  readonly places: ReadonlyMap<string, Place>;
  /** The notebook below the front matter, and the line of the file that it starts on. */
  readonly body: { readonly text: string; readonly line: number };
}

/** A garment's title as its booklet bears it: "A walking skirt, size B". */
export const wholeTitle = ({ title, size }: Pick<Recipe, "title" | "size">): string =>
  size === undefined ? title : `${title}, size ${size}`;
