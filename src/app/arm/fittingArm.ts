import type { ArmholePlate } from "../../core/arm/armCap";
import { type ArmPart, armParts } from "../../core/arm/armParts";
import { type ArmReading, armReading } from "../../core/arm/armReadings";
import { type ArmWish, softArm, type SoftArm, usualArm } from "../../core/arm/softArm";
import type { Measurements } from "../../core/body/measurements";
import type { Cloth } from "../../core/cover/cloth";
import { type Entry, entryLength, type Fitting } from "../../document/fitting";

/** The soft arm of a body; or what was not measured for one; or measurements that cannot be of one arm. */
export type FittingArm =
  | { readonly kind: "arm"; readonly arm: SoftArm; readonly parts: readonly ArmPart[] }
  | Exclude<ArmReading, { readonly kind: "whole" }>;

export function fittingArm(body: Measurements, cloth: Cloth, wish: ArmWish): FittingArm {
  const read = armReading(body);
  if (read.kind !== "whole") return read;
  const arm = softArm(read.readings, cloth, wish);
  return { kind: "arm", arm, parts: armParts(arm) };
}

/** How the arm of a fitting is made: as it was chosen, for the armhole of the form as far as that was measured. */
export function armWish({ arm, form, unit }: Pick<Fitting, "arm" | "form" | "unit">): ArmWish {
  const typed = (entry: Entry | undefined) => {
    const length = entry === undefined ? null : entryLength(entry, unit);
    return length?.ok ? length.value : null;
  };
  const plate: ArmholePlate = { height: typed(form.armholePlateHeight), breadth: typed(form.armholePlateBreadth) };
  return { ...usualArm, ...arm, plate };
}
