/** Other hands: threads that each do one job after another. */

/** A job's answer: what came of it, or the fault that it threw. */
export type Answer<T> = { readonly done: T } | { readonly fault: Fault };

/** An error as plain data. */
export interface Fault {
  readonly name: string;
  readonly message: string;
  readonly code?: string | undefined;
  readonly path?: string | undefined;
  readonly dest?: string | undefined;
}

/** One thread. */
export interface Hand {
  /** Gives it a job; what it answers comes to `answered`. */
  give(job: unknown): void;
  /** Ends it at once, whatever it is doing. */
  end(): Promise<unknown>;
}

export interface Hands {
  /** How many may work at once. */
  readonly count: number;
  /**
   * @param task what all its jobs share
   * @param answered is given each job's answer; a thread that dies answers with a fault
   */
  start(task: unknown, answered: (answer: Answer<unknown>) => void): Hand;
  /** Calls back when the user stops the run. Returns what takes the call back. */
  onStop(stop: () => void): () => void;
}

export function faultOf(error: unknown): Fault {
  if (!(error instanceof Error)) return { name: "Error", message: String(error) };
  const { code, path, dest } = error as { code?: string; path?: string; dest?: string };
  return { name: error.constructor.name, message: error.message, code, path, dest };
}
