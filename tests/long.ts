/** Is this the long run, which takes every case where the normal run takes a few? */
export const ALL_DEMOS = process.env.PLAINWORK_LONG === "1";
