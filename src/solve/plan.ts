/** The plan: everything worked out for one garment. Plain data; see shapes below. */
import type { Quantity } from "../quantity/quantity.ts";
import type { Message } from "../recipe/message.ts";
import type { Recipe } from "../recipe/recipe.ts";

/** How a value is printed. See src/solve/shown.ts. */
export type Style =
  | "tape"
  | "tapeUp"
  | "tapeDown"
  | "part"
  | "fine"
  | "thick"
  | "whole"
  | "cloth"
  | "count"
  | "ratio"
  | "weight"
  | "areal"
  | "area"
  | "time"
  | "minutes"
  | "share"
  | "rate"
  | "perLength"
  | "shareFine"
  | "shareWhole"
  | "decimal"
  | "money"
  | "hourly"
  | "price";

/** One named result, with how it was worked out in the names it came from. */
export interface Value {
  readonly name: string;
  readonly quantity: Quantity;
  /** Ready to print, units included. */
  readonly shown: string;
  /** The formula that was evaluated, or the rule in words where a choice was made. */
  readonly how: string;
  /** The formula with every name replaced by its number; same as `how` where there are no names. */
  readonly inNumbers: string;
  /** Recipe: given by the maker; default: filled in; formula: calculated; choice: searched for by the rule in `how`; workings: the maker's own formula. */
  readonly source: "recipe" | "default" | "formula" | "choice" | "workings";
  /** Meaning in words, as the workings list it. */
  readonly about: string;
  /** The recipe's key, for values that come from the recipe or a default. */
  readonly path?: string;
  /** Where the rule comes from: "common practice, no source", "this project's own modelling choice", a published source. */
  readonly rule?: string;
}

/** A place round the waist where the length is known. Left and right are the wearer's. */
export interface Station {
  /** "centre front", "left front eighth", "left side", "left back eighth", "centre back", "right back eighth", … */
  readonly station: string;
  /** Share of the waist seam from centre front, going round by the wearer's left: 0, 1/8, … 7/8. */
  readonly share: Quantity;
  /** Along the flat cut top from centre front, going round by the wearer's left. */
  readonly alongTop: Quantity;
  readonly toFloor: Quantity;
  /** The same from the straight waist, as it is measured: longer where a pointed edge drops below it. */
  readonly measuredToFloor: Quantity;
  readonly finished: Quantity;
  readonly turnDown: Quantity;
  /** `finished` and `turnDown` on tape marks, so that with hem allowance and tucks they make the cut length. */
  readonly finishedMark: Quantity;
  readonly turnDownMark: Quantity;
  /** Measured on the wearer, or read off the curve between. */
  readonly measured: boolean;
}

/** A stretch of the waist seam set in one way. */
interface SectionBase {
  /** "left front quarter", "left knife pleats" and so on. */
  readonly name: string;
  readonly half: "left" | "right";
  /** Waist place of the end nearer centre front by the left: inches from centre front, by the left. */
  readonly from: Quantity;
  readonly clothFrom: Quantity;
  readonly cloth: Quantity;
  readonly waist: Quantity;
}

/** Drawn up on one set of threads. */
export interface GaugedSection extends SectionBase {
  readonly set: "gauged";
  readonly pleats: number;
  /** Bites in sewing order, 2N of them; they sum to `cloth`. The first is outside. */
  readonly bites: readonly Quantity[];
  readonly style: "even" | "long-and-short";
  readonly longSide?: "outside" | "inside";
  readonly spacing: Quantity;
  /** The 2N + 1 places where the needle goes through, from 0 to `cloth`. */
  readonly marks: readonly Quantity[];
  /** What the last bite holds beyond its tape marks; 0 if nothing. */
  readonly remainder: Quantity;
  /** Lines of the cloth's pattern in one pleat, where the pitch follows the repeat. */
  readonly lines?: number;
}

/** Left plain: as much cloth as waist. */
export interface FlatSection extends SectionBase {
  readonly set: "flat";
}

/** Laid in pleats. Lists run from the end nearer centre front; a half pleat astride a centre line is half a face, half a depth. */
export interface PleatedSection extends SectionBase {
  readonly set: "knife" | "box" | "double-box";
  /** Whole, or with a half. */
  readonly count: Quantity;
  readonly face: Quantity;
  readonly depth: Quantity;
  readonly faces: readonly Quantity[];
  readonly depths: readonly Quantity[];
  readonly towards: "front" | "back";
  readonly layers: number;
}

export type Section = GaugedSection | FlatSection | PleatedSection;

export interface Sensitivity {
  readonly section: string;
  readonly change: Quantity;
  readonly pleats: number;
  readonly perInch: Quantity;
  readonly closes: boolean;
}

/** What the trial's width means for the bites. */
export interface TrialRow {
  /** Measured width as a share more or less than the target: -3/10 … 4/10. */
  readonly change: Quantity;
  readonly measures: Quantity;
  readonly verdict: "keep" | "keep-tight" | "longer" | "none";
  /** Pleats a section and mean bite that follow. Absent when nothing fits. */
  readonly pleats?: number;
  readonly bite?: Quantity;
}

export interface SeamPlace {
  /** Share of the waist seam from centre front, by the left. */
  readonly station: Quantity;
  readonly alongTop: Quantity;
  readonly kind: "seam" | "placket" | "slit";
}

/** One tuck, all lengths above the finished hem. */
export interface Tuck {
  /** Where it is sewn, and the edge it hangs down to, on the made skirt. */
  readonly seam: Quantity;
  readonly edge: Quantity;
  /** Its crease on the flat cloth, before any tuck is sewn. */
  readonly crease: Quantity;
}

/** One flounce, above the finished hem. */
export interface FlouncePlace {
  readonly edge: Quantity;
  readonly heading: Quantity;
}

export interface PocketPlace {
  readonly side: "left" | "right";
  /** In words: "the right side", "the seam nearest the right side". */
  readonly station: string;
  /** From centre front by the left: on the waist seam, as a share of it, and along the flat top. */
  readonly waist: Quantity;
  readonly share: Quantity;
  readonly alongTop: Quantity;
}

export type MapKind = "station" | "opening" | "pocket" | "seam" | "end";

/** One place of the maker's map. */
export interface MapPlace {
  /** All its names: "left side: seam of breadth 1 and breadth 2". */
  readonly place: string;
  /** What stands there, in the order of the names. */
  readonly kinds: readonly MapKind[];
  /** From centre front by the wearer's left, on the waist seam and along the flat cut top. */
  readonly waist: Quantity;
  readonly alongTop: Quantity;
  readonly turnDown: Quantity;
  /** The same on a tape mark, as every chapter prints it. */
  readonly turnDownMark: Quantity;
  /** What stays unsewn (or is slit), both ends measured down from the cut top. */
  readonly unsewn?: { readonly from: Quantity; readonly to: Quantity };
}

/** What another waist would do to this gauging, its rows left in and its flat and pleated parts as they are. */
export interface OtherWaist {
  readonly waist: Quantity;
  /** The recipe asks for it; otherwise a whole step from the waist seam. */
  readonly asked: boolean;
  readonly asPlanned: boolean;
  /** Means over all gauged sections. */
  readonly spacing: Quantity;
  readonly perInch: Quantity;
  readonly fullness: Quantity;
  readonly verdict: "cannot" | "tight" | "serves" | "gapes";
  /** How the band as it is could hook to that waist instead; absent where it cannot, or for the planned waist. */
  readonly hook?: HookSet;
}

/** A further set of eyes on the band. */
export interface HookSet {
  readonly waist: Quantity;
  /** From the closing mark, or from the planned eyes, which is the same distance. */
  readonly away: Quantity;
  /** Towards the garment, whose gauging the band's end then covers; or out along the lap. */
  readonly on: "garment" | "lap";
}

export interface Piece {
  readonly name: string;
  readonly x: Quantity;
  readonly y: Quantity;
  readonly width: Quantity;
  readonly length: Quantity;
}

export interface Layout {
  readonly width: Quantity;
  readonly length: Quantity;
  readonly pieces: readonly Piece[];
  /** Area of cloth that no piece takes. */
  readonly waste: Quantity;
}

/** Lining or interlining on its own cloth. */
export interface LiningLayout {
  readonly which: "lining" | "interlining";
  readonly layout: Layout;
}

export interface Stage {
  readonly name: string;
  readonly low: Quantity;
  readonly high: Quantity;
}

/** The pieces of the skirt in ring order from centre front by the left, by their finished width along the top. */
export interface Breadth {
  readonly name: string;
  readonly whole: boolean;
  readonly from: Quantity;
  readonly to: Quantity;
}

/** One pupil's sampler. */
export interface Sampler {
  /** Gauged: bites in sewing order, on tape marks. */
  readonly bites?: readonly Quantity[];
  readonly style?: "even" | "long-and-short";
  /** Not gauged: the laid pleats that it follows. */
  readonly laid?: PleatedSection;
  /** Work on one sampler. */
  readonly stages: readonly Stage[];
}

export interface Plan {
  readonly recipe: Recipe;
  readonly values: ReadonlyMap<string, Value>;
  readonly balance: readonly Station[];
  /** The top's turn-down curve, finer than the stations: share of the waist seam, along the top, turn-down. For drawing. */
  readonly curve: readonly {
    readonly share: Quantity;
    readonly alongTop: Quantity;
    readonly turnDown: Quantity;
  }[];
  /** From centre front round by the wearer's left. */
  readonly sections: readonly Section[];
  /** Those of them that are gauged. */
  readonly gauged: readonly GaugedSection[];
  /** How flat and pleated parts are set: in one layer in the edge's own seam, or turned down and whipped. Absent where all is gauged. */
  readonly flatParts?: "seam" | "whip";
  /** Rows of gauging, how far below the fold each runs. */
  readonly rows: readonly Quantity[];
  readonly sensitivity: readonly Sensitivity[];
  readonly trialTable: readonly TrialRow[];
  readonly breadths: readonly Breadth[];
  readonly seams: readonly SeamPlace[];
  readonly opening: {
    readonly share: Quantity;
    readonly alongTop: Quantity;
    readonly station: string;
    readonly kind: "seam" | "slit";
    /** The fold of a laid pleat that it was moved under. */
    readonly under?: string;
  };
  readonly tucks: readonly Tuck[];
  readonly flounces: readonly FlouncePlace[];
  readonly pocket?: PocketPlace;
  /** From centre front round by the wearer's left. */
  readonly map: readonly MapPlace[];
  /** In order of size; empty where nothing is gauged. */
  readonly otherWaists: readonly OtherWaist[];
  /** As the recipe lists them. */
  readonly hookSets: readonly HookSet[];
  readonly layout: Layout;
  /** The lining, then the interlining; empty where there is neither. */
  readonly linings: readonly LiningLayout[];
  readonly stages: readonly Stage[];
  /** Where a class sheet is asked for. */
  readonly sampler?: Sampler;
  readonly messages: readonly Message[];
}
