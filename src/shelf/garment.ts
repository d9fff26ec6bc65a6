/** One garment of a run: its booklet made, or left as it stands where nothing has changed, and what is to be told of it. */
import { join } from "node:path";
import { buildProject, checkProject } from "./build.ts";
import type { Project } from "./find.ts";
import { Neighbours } from "./neighbours.ts";
import { Leftovers } from "./place.ts";
import type { Printing } from "./print.ts";
import { type Report, reportOf } from "./report.ts";
import { keyOf, madeBefore, putStamp } from "./unchanged.ts";
import type { World } from "./world.ts";

/** What is asked of every garment of a run. */
export interface Asked {
  readonly command: "build" | "check";
  /** The folder of the booklets as the user named it. */
  readonly out: string;
  readonly printing?: Printing | undefined;
  /** The only size that is wanted. */
  readonly only?: string | undefined;
  /** Is everything made, also what has not changed? */
  readonly anew: boolean;
}

/** Does what a run does to one garment after another. */
export class Garments {
  private readonly world: World;
  private readonly asked: Asked;
  private readonly neighbours: Neighbours;
  private readonly leftovers: Leftovers;

  constructor(world: World, asked: Asked) {
    this.world = world;
    this.asked = asked;
    this.neighbours = new Neighbours(world);
    this.leftovers = new Leftovers(world, world.resolve(asked.out));
  }

  /** Builds or checks one. Throws what the disk throws, and UsageError where a size is not there. */
  do(project: Project): Report {
    const { world, asked, neighbours, leftovers } = this;
    const { command, out, printing, only, anew } = asked;
    if (command === "check") return reportOf(checkProject(world, project, neighbours, only), undefined, only);
    const written = `${out}/${project.name}`;
    const folder = world.resolve(out);
    // One size alone leaves the others as they stand: what these were made from is not known here.
    const key =
      only === undefined ? keyOf(world, project, neighbours, [out, JSON.stringify(printing)]) : undefined;
    const before =
      key !== undefined && !anew ? madeBefore(world, project, join(folder, project.name), key) : undefined;
    if (before) {
      leftovers.tidy(project.name);
      return { ...before, kept: true };
    }
    const outcome = buildProject(world, project, folder, {
      printing,
      neighbours,
      leftovers,
      only,
      ...(key === undefined
        ? {}
        : {
            seal: (fresh, names, outcome) => {
              if (outcome.notPrinted === undefined)
                putStamp(world, fresh, names, { key, outcome, report: reportOf(outcome, written, only) });
            },
          }),
    });
    return reportOf(outcome, written, only);
  }
}
