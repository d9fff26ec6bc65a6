/** One half of the skirt along its flat top, from centre front to centre back, as distances from centre front. */
import { type Quantity, sub, toFloat } from "../quantity/quantity.ts";
import type { Plan, SeamPlace, Station } from "../solve/plan.ts";
import { pen, penOf } from "./measure.ts";

export interface Half {
  readonly side: "left" | "right";
  /** Half the round, in inches: where centre back stands. */
  readonly round: number;
  readonly stations: readonly (Station & { readonly fromFront: number })[];
  readonly curve: readonly { readonly fromFront: number; readonly turnDown: number }[];
  readonly seams: readonly { readonly fromFront: number; readonly kind: SeamPlace["kind"] }[];
  /** A place along the top from centre front by this half's way, exactly. */
  placeOf(at: { readonly alongTop: Quantity; readonly share: Quantity }): Quantity;
}

/** Cuts one half out of the plan's ring. Centre front and centre back belong to both. */
export function halfOf(plan: Plan, side: "left" | "right"): Half {
  const whole = penOf(plan, "skirt.round");
  const round = whole / 2;
  const exactRound = plan.values.get("skirt.round")?.quantity as Quantity;
  const placeOf = ({
    alongTop,
    share,
  }: {
    readonly alongTop: Quantity;
    readonly share: Quantity;
  }): Quantity => (side === "left" || toFloat(share.value) === 0 ? alongTop : sub(exactRound, alongTop));
  const onHalf = (along: number): number | undefined => {
    const at = side === "left" || along === 0 ? along : whole - along;
    return at <= round + 1e-9 ? at : undefined;
  };
  const within = <Item extends { readonly alongTop: Quantity }>(items: readonly Item[]) =>
    items
      .flatMap((item) => {
        const fromFront = onHalf(pen(item.alongTop));
        return fromFront === undefined ? [] : [{ ...item, fromFront }];
      })
      .sort((a, b) => a.fromFront - b.fromFront);
  return {
    side,
    round,
    stations: within(plan.balance),
    // The curve gives centre front twice, as its beginning and as its end.
    curve: within(plan.curve)
      .filter(({ fromFront }, i, all) => fromFront !== all[i - 1]?.fromFront)
      .map(({ fromFront, turnDown }) => ({ fromFront, turnDown: pen(turnDown) })),
    seams: within(plan.seams).map(({ fromFront, kind }) => ({ fromFront, kind })),
    placeOf,
  };
}
