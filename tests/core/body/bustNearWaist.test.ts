import { expect, test } from "vitest";
import { bustNearWaist } from "../../../src/core/body/bustNearWaist";
import { lengths } from "../../tools/lengths";

const asked = (given: Parameters<typeof lengths>[0]) => bustNearWaist(lengths(given));

/** Broken on purpose: the names of the other way to read a line, a limit reached taken for one that is passed. Seen to fail. */
test("a bust line close above the waistline is asked about by the readings that place it", () => {
  expect(asked({ bustBelowNape: 330, waistBelowNape: 390 })).toEqual([
    {
      severity: "pleaseCheck",
      code: "linesClose",
      names: ["bustBelowNape", "waistBelowNape"],
      got: 60,
      expected: { least: 80, most: 80 },
    },
  ]);
  const [mixed] = asked({ napeHeight: 1400, bustHeight: 1070, waistBelowNape: 390 });
  expect(mixed).toMatchObject({ names: ["bustHeight", "waistBelowNape"], got: 60 });
});

test("nothing is asked where the lines lie 80 mm apart, on one another or the wrong way, or where one is unknown", () => {
  for (const waistBelowNape of [410, 330, 300]) expect(asked({ bustBelowNape: 330, waistBelowNape })).toEqual([]);
  expect(asked({ bustBelowNape: 330 })).toEqual([]);
  expect(asked({ waistBelowNape: 390 })).toEqual([]);
});
