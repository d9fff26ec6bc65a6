/** Changes inside the formulas that stand in the source as text: `"max(a.b, 2 * c)"`. */

const WORD = "[A-Za-z][\\w.]*";
/** Two words side by side are prose, not a formula. */
const PROSE = new RegExp(`${WORD}\\s+${WORD}`);
const FORMULA = /^[\w\s.()+*/,<>=-]+$/;
const UNIT = /\b(\d) (in|cm|mm|yd|m|ft)\b/g;

/** Is this text a sum of named values? Names alone and numbers alone are none. */
export function isFormula(text) {
  const bare = text.replace(UNIT, "$1");
  if (!FORMULA.test(bare) || PROSE.test(bare)) return false;
  return /[a-z]\.[a-z]/.test(bare) && (/ [-+*/] /.test(bare) || /\b(min|max|floor|ceil|round)\(/.test(bare));
}

const SIGNS = { "+": "-", "-": "+", "*": "/", "/": "*" };
const NAMES = { min: "max", max: "min", floor: "ceil", ceil: "floor", round: "floor" };

/** Every single change of one formula: where in it, how long, what comes instead. */
export function changesOf(text) {
  const signs = [...text.matchAll(/(?<= )[-+*/](?= )/g)].map((m) => [m, SIGNS[m[0]]]);
  const names = [...text.matchAll(/\b(?:min|max|floor|ceil|round)(?=\()/g)].map((m) => [m, NAMES[m[0]]]);
  const numbers = [...text.matchAll(/(?<![\w.])\d+(?![\w.])/g)].map((m) => [m, String(Number(m[0]) + 1)]);
  return [...signs, ...names, ...numbers].map(([m, to]) => ({ at: m.index, length: m[0].length, to }));
}
