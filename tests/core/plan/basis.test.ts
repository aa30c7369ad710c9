import { expect, test } from "vitest";
import { levelNames } from "../../../src/core/body/vocabulary";
import { basis } from "../../../src/core/plan/basis";
import { planFitting } from "../../../src/core/plan/planFitting";
import { lengths } from "../../tools/lengths";
import { batting, body, form } from "./examplePerson";

/** The body and the form, each with its lines at heights of its own below the nape, from the bust down (mm). */
const placed = (measured: typeof body, depths: readonly number[]) => {
  const { shoulderToApex: _1, napeToWaist: _2, waistToHighHip: _3, waistToFullHip: _4, ...rest } = measured;
  return {
    ...rest,
    ...lengths(Object.fromEntries(levelNames.map((name, i) => [`${name}BelowNape`, depths[i] as number]))),
  };
};
const person = placed(body, [250, 330, 400, 490, 590]);
const linesOf = (formDepths: readonly number[]) =>
  basis({ body: person, form: placed(form, formDepths) }).formLines.flatMap(({ name, depthBelowNape }) =>
    name === "between" ? [depthBelowNape] : [],
  );

/** Broken on purpose: lines above the bust and below the full hip kept, and crowded ones. Seen to fail. */
test("the bare form's curve goes through its own lines between the person's, 25 mm from them and more", () => {
  expect(linesOf([225, 305, 425, 515, 615])).toEqual([305, 425, 515]);
  expect(linesOf([250, 306, 424, 514, 590])).toEqual([]);
  expect(linesOf([275, 355, 440, 540, 565])).toEqual([275, 355, 440, 540, 565]);
});

/** Broken on purpose: given to the level below. Seen to fail. */
test("a plan tells each line of the form between two levels with the upper one", () => {
  const { levels } = planFitting({ body: person, form: placed(form, [290, 360, 440, 540, 640]), batting });
  expect(levels.map(({ name, below }) => [name, below.form.map(({ depthBelowNape }) => depthBelowNape)])).toEqual([
    ["bust", [290]],
    ["underbust", [360]],
    ["waist", [440]],
    ["highHip", [540]],
    ["fullHip", []],
  ]);
});
