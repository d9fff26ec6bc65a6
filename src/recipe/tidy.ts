/** Objects without entries that are undefined, so that "not given" is always "not there". */

type Kept<T> = {
  [Key in keyof T as undefined extends T[Key] ? never : Key]: T[Key];
} & {
  [Key in keyof T as undefined extends T[Key] ? Key : never]?: Exclude<T[Key], undefined>;
};

/** A copy without undefined entries. */
export function tidy<T extends object>(object: T): Kept<T> {
  return Object.fromEntries(Object.entries(object).filter(([, value]) => value !== undefined)) as Kept<T>;
}
