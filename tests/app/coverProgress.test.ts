import { describe, expect, test } from "vitest";
import { apply } from "../../src/app/session/commands";
import { coverProgress } from "../../src/app/progress/coverProgress";
import { doneness } from "../../src/app/progress/doneness";
import { isConfirmed, padProgress } from "../../src/app/progress/padProgress";
import { type LevelName, levelNames } from "../../src/core/body/vocabulary";
import { type Fitting, writeFitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { examplePlan as plan } from "../gallery/examplePlan";

const at = "2026-01-02T03:04:05.000Z";
const bare = readFitting({ version: 1, unit: "cm", body: {}, form: {}, batting: { name: "", layerThickness: "6 mm" } });
if (!bare.ok) throw new Error("an empty fitting can be read");
const allOn: Fitting = plan.pieces.reduce(
  (fitting, piece) =>
    apply(fitting, { does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } }),
  bare.value,
);
const last = plan.pieces[plan.pieces.length - 1];
if (last === undefined) throw new Error("the example has pieces");

function readLevel(fitting: Fitting, level: LevelName, over?: "cover"): Fitting {
  const predicted = plan.levels.find(({ name }) => name === level)?.predicted;
  const where = over === undefined ? {} : { over };
  const texts = { Girth: predicted?.girth, FrontArc: predicted?.frontArc, BackArc: predicted?.backArc };
  return Object.entries(texts).reduce(
    (before, [part, length]) =>
      apply(before, {
        does: "record",
        entry: { did: "measured", readings: { [`${level}${part}`]: `${String(length)} mm` }, ...where, at },
      }),
    fitting,
  );
}
const covered = (fitting: Fitting) => coverProgress(plan, padProgress(plan, fitting), fitting);
const readLevels = (fitting: Fitting): readonly LevelName[] =>
  doneness(plan, covered(fitting)).levels.flatMap(({ level, read }) => (read === "all" ? [level] : []));

describe("over the cover", () => {
  const underIt = levelNames.reduce((fitting, level) => readLevel(fitting, level), allOn);

  test("what was read over the padding is only expected, at the value that was read", () => {
    expect(doneness(plan, padProgress(plan, underIt)).overall).toBe("done");
    expect(readLevels(underIt)).toEqual([]);
    expect(doneness(plan, covered(underIt)).overall).toBe("unread");
    const { now } = covered(underIt);
    expect(now.waist.girth.value).toBe(padProgress(plan, underIt).now.waist.girth.value);
    expect(levelNames.some((level) => isConfirmed(now[level].girth))).toBe(false);
  });

  test("each level that is read over the cover is read, and all of them are done", () => {
    expect(readLevels(readLevel(underIt, "waist", "cover"))).toEqual(["waist"]);
    const all = levelNames.reduce((fitting, level) => readLevel(fitting, level, "cover"), underIt);
    expect(doneness(plan, covered(all)).overall).toBe("done");
  });

  test("a piece taken off since means that the cover was off", () => {
    const read = readLevel(underIt, "waist", "cover");
    expect(readLevels(apply(read, { does: "record", entry: { did: "unpinned", pieceId: last.id, at } }))).toEqual([]);
  });

  test("is kept in the file", () => {
    const read = readLevel(underIt, "waist", "cover");
    const again = readFitting(JSON.parse(JSON.stringify(writeFitting(read))));
    expect(again.ok && readLevels(again.value)).toEqual(["waist"]);
  });
});
