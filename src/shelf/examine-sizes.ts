/** Every size of a recipe worked out, each with its own messages; what does not fit at one size keeps no other back. */
import type { Own } from "../booklet/booklet.ts";
import { type ReadAll, workedOut } from "../booklet/examine.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import type { Message } from "../recipe/message.ts";
import type { ReadRecipe } from "../recipe/read.ts";
import { folderOf } from "../recipe/sizes/names.ts";
import { ofAllSizes } from "../recipe/sizes/said.ts";
import type { Plan } from "../solve/plan.ts";
import { UsageError } from "./find.ts";
import { failed, type Outcome, type SizeOutcome } from "./outcome.ts";

type Sizes = NonNullable<ReadRecipe["sizes"]>;

interface Wanted {
  /** Further messages, of files that cannot be read; with errors among them nothing is built. */
  readonly besides: readonly Message[];
  /** The recipe, as the user named it. */
  readonly shown: string;
  readonly only: string | undefined;
  /** What a page carries of its making. */
  readonly source: (values: Plan["values"], size: string) => NonNullable<Own["source"]>;
  readonly paces: Paces;
}

/** Works sizes out; of what the reading says, what is about sizes that are not wanted is left out. Throws UsageError where there is no such size. */
export function examinedSizes(
  { read, own, messages: ofOthers }: ReadAll,
  all: Sizes,
  { besides, shown, only, source, paces }: Wanted,
): Pick<Outcome, "messages" | "own" | "sizes"> {
  const beside = [...besides, ...ofOthers];
  const sound = !failed(beside);
  const wanted = wantedOf(all, shown, only);
  const ofReading = read.messages.filter(
    ({ sizes }) => !sizes || sizes.some((name) => wanted.some((size) => size.name === name)),
  );
  const found = wanted.map(({ name, recipe }) => ({
    name,
    // A record is of one garment; the maker's pace is the same at every size.
    ...(recipe ? workedOut({ ...recipe, recorded: { paces } }, own.notebook, sound) : { messages: [] }),
  }));
  const sizes = found.map(({ name, messages: ofSize, ...worked }): SizeOutcome => {
    const said = ofReading.filter((message) => !message.sizes || message.sizes.includes(name));
    const size = { name, folder: folderOf(name), messages: [...said, ...ofSize] };
    if (!("plan" in worked) || !worked.plan || !worked.values || failed(said)) return size;
    return { ...size, plan: worked.plan, source: source(worked.values, name) };
  });
  const messages = [...ofReading, ...beside, ...ofAllSizes(found)];
  return sound ? { messages, sizes, own } : { messages, sizes };
}

function wantedOf(sizes: Sizes, shown: string, only: string | undefined): Sizes {
  if (only === undefined) return sizes;
  const found = sizes.filter(({ name }) => name.toLowerCase() === only.trim().toLowerCase());
  if (found.length > 0) return found;
  const names = sizes.map(({ name }) => name).join(", ");
  throw new UsageError(`${shown} has no size "${only}": its sizes are ${names}`);
}
