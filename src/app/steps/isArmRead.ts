import { armReading, armReadingNames } from "../../core/arm/armReadings";
import { entryLength, type Fitting } from "../../document/fitting";

/** Whether everything was read that an arm is made from, and can be of one arm: what nobody measured is not made. */
export function isArmRead({ body, unit }: Pick<Fitting, "body" | "unit">): boolean {
  const read = armReadingNames.flatMap((name) => {
    const entry = body[name];
    const length = entry === undefined ? null : entryLength(entry, unit);
    return length?.ok ? [[name, length.value] as const] : [];
  });
  return armReading(Object.fromEntries(read)).kind === "whole";
}
