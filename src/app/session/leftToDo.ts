import { type MeasurementName, requiredMeasurementNames } from "../../core/body/vocabulary";
import type { Fitting } from "../../document/fitting";
import { type Doneness, doneness } from "../progress/doneness";
import { derivation } from "./derived";

/** What is left to do in a fitting that is not open. */
export type LeftToDo =
  /** Girths that a plan needs: all of them, or the ones named. */
  | { readonly kind: "unmeasured" }
  | { readonly kind: "girths"; readonly names: readonly MeasurementName[] }
  /** They are there, and cannot all be right. */
  | { readonly kind: "waiting" }
  /** The plan asks for no piece. */
  | { readonly kind: "nothing" }
  | { readonly kind: "planned"; readonly all: number }
  | { readonly kind: "pinned"; readonly pinned: number; readonly all: number }
  /** It may stop here: with pieces left, as far as the tape tells. */
  | { readonly kind: "stopHere"; readonly pinned: number; readonly all: number }
  | { readonly kind: "allPinned"; readonly all: number; readonly how: Exclude<Doneness["overall"], "stopHere"> };

/** Quick while girths are missing; otherwise it plans the whole body, which takes a while. */
export function leftToDo(fitting: Fitting): LeftToDo {
  const names = requiredMeasurementNames.filter((name) => fitting.body[name] === undefined);
  if (names.length > 0)
    return names.length < requiredMeasurementNames.length ? { kind: "girths", names } : { kind: "unmeasured" };
  const { planning, progress } = derivation()(fitting);
  if (planning.kind === "waiting" || progress === null) return { kind: "waiting" };
  const { pinnedCount: pinned } = progress;
  const all = progress.pieces.length;
  if (all === 0) return { kind: "nothing" };
  const { overall } = doneness(planning.plan, progress);
  if (overall === "stopHere" && pinned > 0) return { kind: "stopHere", pinned, all };
  if (pinned === 0) return { kind: "planned", all };
  if (pinned < all) return { kind: "pinned", pinned, all };
  return { kind: "allPinned", all, how: overall === "stopHere" ? "done" : overall };
}
