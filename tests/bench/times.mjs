/** Numbers of times measured, and how they are told. */

const sorted = (times) => [...times].sort((a, b) => a - b);
export const median = (times) => sorted(times)[times.length >> 1];
export const percentile = (times, share) =>
  sorted(times)[Math.min(times.length - 1, Math.ceil(times.length * share) - 1)];

/** The median with the least and the most, in milliseconds. */
export const spread = (times) =>
  `${median(times).toFixed(median(times) < 10 ? 2 : 0)} (${Math.min(...times).toFixed(median(times) < 10 ? 2 : 0)} to ${Math.max(...times).toFixed(median(times) < 10 ? 2 : 0)})`;

/** A ratio of two medians. */
export const ratio = (times, base) => (median(times) / median(base)).toFixed(2);

/** A table's row. */
export const row = (...cells) => `| ${cells.join(" | ")} |`;
