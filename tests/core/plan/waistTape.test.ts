import { expect, test } from "vitest";
import { planFitting } from "../../../src/core/plan/planFitting";
import { waistTape } from "../../../src/core/plan/waistTape";
import { batting, body, bodyWith, form, levelOf } from "./examplePerson";

const planned = (person: typeof body) => {
  const plan = planFitting({ body: person, form, batting });
  return { tape: waistTape(plan, person), waist: levelOf(plan, "waist") };
};

/** Broken on purpose: the length of another level taken, the end that is turned under left out. Seen to fail. */
test("the waist tape is as long as the body's waist with an inch to turn under, at the height it was read", () => {
  const { tape, waist } = planned(body);
  expect(tape).toEqual({
    height: { kind: "alongBack", value: body.napeToWaist },
    length: waist.body.girth.value + 25,
    tilt: null,
    tiltAdds: 0,
  });
});

test("straight down from the nape where nobody ran the tape along the back", () => {
  const { napeToWaist: _napeToWaist, ...rest } = body;
  const { tape, waist } = planned(rest);
  expect(tape.height).toEqual({ kind: "straightDown", value: waist.depthBelowNape.value });
});

test("a tilt is known with both of its ends alone, and makes the tape longer", () => {
  const tilted = planned(bodyWith({ waistToFloorFront: 1020, waistToFloorBack: 1040 }));
  expect(tilted.tape).toMatchObject({ tilt: { front: 1020, back: 1040 } });
  expect(tilted.tape.tiltAdds).toBeGreaterThan(2);
  expect(tilted.tape.length).toBeCloseTo(tilted.waist.body.girth.value + 25 + tilted.tape.tiltAdds, 9);
  for (const half of [{ waistToFloorFront: 1020 }, { waistToFloorBack: 1040 }])
    expect(planned(bodyWith(half)).tape).toMatchObject({ tilt: null, tiltAdds: 0 });
});
