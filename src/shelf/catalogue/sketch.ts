/**
 * A garment's small picture as lines in the catalogue itself: a picture that is a file of its own costs a browser as much as a
 * page of text. Only the lines are taken over, as numbers; whatever else a file may hold stays outside.
 */
import { PICTURE_SIZE } from "../../figure/picture.ts";

const LINES = /<path d="([MLHVZmlhvz\d .-]+)" fill="none" stroke="currentColor"/g;

/** @param svg the text of a `figures/picture.svg`. @returns an inline drawing; undefined where its lines are not those of one */
export function sketchOf(svg: string): string | undefined {
  const [folds, outline, ...more] = [...svg.matchAll(LINES)].map(([, d]) => d);
  if (folds === undefined || outline === undefined || more.length > 0) return undefined;
  const { width, height } = PICTURE_SIZE;
  return `<svg width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" aria-hidden="true"><path d="${folds}"/><path class="outline" d="${outline}"/></svg>`;
}
