import { describe, expect, test } from "vitest";
import { heightReadings } from "../../../src/core/body/heightReadings";
import { lengths } from "../../tools/lengths";

/** How far below its waist the hip levels of a body lie that was read at the waist alone, on a form (mm). */
const hipsOn = (form: { readonly [name: string]: number }) => {
  const { depths } = heightReadings(lengths({ waistBelowNape: 400 }), lengths(form));
  return { highHip: depths.highHip.value - 400, fullHip: depths.fullHip.value - 400 };
};

/** Broken on purpose: the tape alone, the lines alone, the lines' sum. Seen to fail. */
describe("hips that nobody read lie as far below the waist as the form's", () => {
  test.each([
    ["by its lines", { waistBelowNape: 370, highHipBelowNape: 460, fullHipBelowNape: 550 }],
    ["by the tape down its side", { waistToHighHip: 90, waistToFullHip: 180 }],
    [
      "by its lines before the tape",
      { waistBelowNape: 370, highHipBelowNape: 460, fullHipBelowNape: 550, waistToFullHip: 230 },
    ],
    [
      "by the tape where its waist was not read",
      { highHipBelowNape: 500, fullHipBelowNape: 560, waistToHighHip: 90, waistToFullHip: 180 },
    ],
    ["by the tape where its hips were not read", { waistBelowNape: 370, waistToHighHip: 90, waistToFullHip: 180 }],
  ])("%s", (_, form) => {
    const { highHip, fullHip } = hipsOn(form);
    expect([highHip, fullHip]).toEqual([expect.closeTo(90, 6), expect.closeTo(180, 6)]);
  });
});
