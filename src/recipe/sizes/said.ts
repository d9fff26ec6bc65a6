/** Messages of several sizes as one list: what all of them say is said once, all else with the names of its sizes. */
import type { Message } from "../message.ts";

/** One size's own messages. */
export interface SaidOfSize {
  readonly name: string;
  readonly messages: readonly Message[];
}

/** In the order in which each message is first said. */
export function ofAllSizes(sizes: readonly SaidOfSize[]): Message[] {
  const found = new Map<string, { message: Message; names: string[] }>();
  for (const { name, messages } of sizes) {
    for (const message of messages) {
      const key = JSON.stringify(message);
      const known = found.get(key);
      if (!known) found.set(key, { message, names: [name] });
      else if (!known.names.includes(name)) known.names.push(name);
    }
  }
  return [...found.values()].map(({ message, names }) =>
    names.length === sizes.length ? message : { ...message, sizes: names },
  );
}
