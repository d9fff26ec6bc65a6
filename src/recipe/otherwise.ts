/** Keys that a maker may well write and that stand elsewhere under another name: what to write instead, by their path. */

const FACING = "a facing belongs to the hem: write hem: {kind: faced, depth: 4 in, cloth: other}";
const BAND = "write band: {depth: 1 1/4 in} in the block attach";
const NOTIONS = "count it into notions";
const LENGTH = "lengths follow from waist-to-floor inside wearer and off-floor inside skirt";
const NAME = "write her name, or a code, as name inside wearer";

export const OTHERWISE: ReadonlyMap<string, string> = new Map(
  Object.entries({
    client: NAME,
    "commission.client": NAME,
    "wearer.length": "write waist-to-floor: {front: 40 in, side: 41 in, back: 42 in}",
    "wearer.worn-over": "write it as over",
    "wearer.worn-beneath": "write it as over",
    "cloth.price": "write cloth: 9.50 per yd inside price, in the block work",
    "skirt.length": LENGTH,
    "skirt.facing": FACING,
    "skirt.hem.facing": FACING,
    "skirt.band": BAND,
    "skirt.waistband": BAND,
    "attach.waistband": BAND,
    "attach.point": "write waist-edge: {shape: point, depth: 2 in, from-centre: 4 in}",
    "work.price.braid": NOTIONS,
    "work.price.facing": NOTIONS,
    "work.price.thread": NOTIONS,
  }),
);
