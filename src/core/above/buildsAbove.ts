import type { Measurements } from "../body/measurements";
import type { Batting } from "../material";
import { type AddedByPadding, nothingAdded } from "./aboveInput";
import type { BuildAbove, MadeLayers } from "./buildAbove";
import { chestFill } from "./chestFill";
import { neck } from "./neck";
import { shoulder } from "./shoulder";
import { upperBack } from "./upperBack";
import { upperChest } from "./upperChest";

/**
 * Everything that is built or marked above the bust line, in the order of the work: what each is cut from, what the tape reads
 * before and after it, and what stays. The readings are of the body and of the BARE form (mm); `added` is what the
 * padding of the levels adds up there, `made` how many layers hands have put on what is built already. A build of which a reading is missing is not built and says which.
 */
export function buildsAbove(
  body: Measurements,
  form: Measurements,
  batting: Pick<Batting, "layerThickness">,
  added: AddedByPadding = nothingAdded,
  made: ReadonlyMap<string, MadeLayers> = new Map(),
): readonly BuildAbove[] {
  const input = { body, form, layer: batting.layerThickness, added, made };
  const [left, right] = [shoulder(input, "left"), shoulder(input, "right")];
  const [leftHeight, leftLength] = left as readonly [BuildAbove, BuildAbove];
  const [rightHeight, rightLength] = right as readonly [BuildAbove, BuildAbove];
  return [
    upperBack(input),
    upperChest(input),
    ...chestFill(input),
    leftHeight,
    rightHeight,
    leftLength,
    rightLength,
    neck(input),
  ];
}
