import { type ArmPart, armParts } from "../../core/arm/armParts";
import { type ArmReading, armReading } from "../../core/arm/armReadings";
import { type ArmWish, softArm, type SoftArm, usualArm } from "../../core/arm/softArm";
import type { Measurements } from "../../core/body/measurements";
import type { Cloth } from "../../core/cover/cloth";

/** The soft arm of a body; or what was not measured for one; or measurements that cannot be of one arm. */
export type FittingArm =
  | { readonly kind: "arm"; readonly arm: SoftArm; readonly parts: readonly ArmPart[] }
  | Exclude<ArmReading, { readonly kind: "whole" }>;

export function fittingArm(body: Measurements, cloth: Cloth, wish: ArmWish = usualArm): FittingArm {
  const read = armReading(body);
  if (read.kind !== "whole") return read;
  const arm = softArm(read.readings, cloth, wish);
  return { kind: "arm", arm, parts: armParts(arm) };
}
