/** Each figure's drawing, so that a test can look at its labels. */
import { drawBalance } from "../../src/figure/balance.ts";
import { drawBreadths } from "../../src/figure/breadths.ts";
import { drawDogLeg } from "../../src/figure/dog-leg.ts";
import type { Drawing } from "../../src/figure/drawing.ts";
import { drawDrawnUp } from "../../src/figure/drawn-up.ts";
import { drawEdgeSection } from "../../src/figure/edge.ts";
import { drawEvidence } from "../../src/figure/evidence.ts";
import { drawFaults } from "../../src/figure/faults.ts";
import type { FigureName } from "../../src/figure/figure.ts";
import { drawFinished } from "../../src/figure/finished.ts";
import { drawGauging } from "../../src/figure/gauging.ts";
import { drawHem } from "../../src/figure/hem.ts";
import { drawLayout } from "../../src/figure/layout.ts";
import { drawLining } from "../../src/figure/lining.ts";
import { drawLayoutInterlining, drawLayoutLining } from "../../src/figure/lining-layout.ts";
import { drawMap } from "../../src/figure/map.ts";
import { drawPleats } from "../../src/figure/pleats.ts";
import { drawRange } from "../../src/figure/range.ts";
import { STEPS } from "../../src/figure/steps/index.ts";
import { drawWaistRing } from "../../src/figure/waist-ring.ts";
import { drawWhipping } from "../../src/figure/whipping.ts";
import type { Plan } from "../../src/solve/plan.ts";

export const DRAWINGS: Readonly<Record<FigureName, (plan: Plan) => Drawing>> = {
  finished: drawFinished,
  evidence: drawEvidence,
  layout: drawLayout,
  "layout-lining": drawLayoutLining,
  "layout-interlining": drawLayoutInterlining,
  lining: drawLining,
  breadths: drawBreadths,
  map: drawMap,
  hem: drawHem,
  balance: drawBalance,
  edge: drawEdgeSection,
  gauging: drawGauging,
  pleats: drawPleats,
  "drawn-up": drawDrawnUp,
  "waist-ring": drawWaistRing,
  whipping: drawWhipping,
  "dog-leg": drawDogLeg,
  faults: drawFaults,
  range: drawRange,
  ...(Object.fromEntries(Object.entries(STEPS).map(([name, step]) => [name, step.draw])) as Record<
    keyof typeof STEPS,
    (plan: Plan) => Drawing
  >),
};
