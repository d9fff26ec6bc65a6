/** Every size of a recipe worked out, each with its own messages; what does not fit at one size keeps no other back. */
import type { Own } from "../booklet/booklet.ts";
import type { Paces } from "../recipe/as-made/pace.ts";
import type { Message } from "../recipe/message.ts";
import type { ReadRecipe } from "../recipe/read.ts";
import { folderOf } from "../recipe/sizes/names.ts";
import { ofAllSizes } from "../recipe/sizes/said.ts";
import type { Plan } from "../solve/plan.ts";
import { UsageError } from "./find.ts";
import { failed, type Outcome, type SizeOutcome } from "./outcome.ts";
import { workedOut } from "./worked-out.ts";

type Sizes = NonNullable<ReadRecipe["sizes"]>;

/**
 * Works sizes out.
 *
 * @param read what the recipe's reading says; what is about a size that is not wanted is left out
 * @param beside what is wrong whatever the size; with an error nothing can be built
 * @param only the name of the only size wanted; throws UsageError where there is no such size
 */
export function examinedSizes(
  all: Sizes,
  read: readonly Message[],
  {
    own,
    beside,
    shown,
    only,
    source,
    paces,
  }: {
    own: Own;
    beside: readonly Message[];
    shown: string;
    only: string | undefined;
    source: (plan: Plan, size: string) => NonNullable<Own["source"]>;
    paces: Paces;
  },
): Pick<Outcome, "messages" | "own" | "sizes"> {
  const sound = !failed(beside);
  const wanted = wantedOf(all, shown, only);
  const found = wanted.map((size) => ({
    name: size.name,
    folder: folderOf(size.name),
    ...(size.recipe ? workedOut({ ...size.recipe, recorded: { paces } }, own.notebook) : { messages: [] }),
  }));
  const ofReading = read.filter(
    ({ sizes }) => !sizes || sizes.some((name) => wanted.some((size) => size.name === name)),
  );
  const sizes = found.map((size): SizeOutcome => {
    const { plan, ...rest } = size;
    const said = ofReading.filter((message) => !message.sizes || message.sizes.includes(size.name));
    const messages = [...said, ...size.messages];
    return {
      ...rest,
      messages,
      ...(plan && sound && !failed(messages) ? { plan, source: source(plan, size.name) } : {}),
    };
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
