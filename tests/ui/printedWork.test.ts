import { describe, expect, test } from "vitest";
import type { PlannedPiece } from "../../src/core/plan/plan";
import type { WorkEntry } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { lengthWriter } from "../../src/text/lengthWriter";
import { sheetKinds, usualSheets } from "../../src/app/print/sheetKind";
import { cutCards, cutPages } from "../../src/ui/kit/sheet/cutCards";
import { readingsAfter, takenByLevel } from "../../src/app/progress/readingsAfter";
import { printingWords } from "../../src/text/printing";
import { examplePlan as plan } from "../gallery/examplePlan";

const [one, two] = plan.pieces as readonly [PlannedPiece, PlannedPiece, ...PlannedPiece[]];
const at = "2026-01-02T03:04:05.000Z";
const pin = (piece: PlannedPiece): WorkEntry => ({ did: "pinned", piece: pieceToFile(piece, "", ""), at });
const read = (readings: { readonly [name: string]: string }): WorkEntry => ({ did: "measured", readings, at });
const written = (...work: readonly WorkEntry[]) => {
  const taken = readingsAfter({ work, unit: "cm" });
  return [one, two].map(({ id }) =>
    takenByLevel(taken.get(id) ?? [])
      .map(({ level, parts }) => `${level} ${parts.map(({ part, length }) => `${part} ${length}`).join(", ")}`)
      .join("; "),
  );
};

describe("readings on paper", () => {
  test("stand beside the piece that was pinned last when they were taken", () => {
    expect(written(read({ waistGirth: "70" }), pin(one), read({ waistGirth: "72" }), pin(two))).toEqual([
      "waist girth 720",
      "",
    ]);
  });
  test("level by level, all around first, and of a place read twice the last", () => {
    const work = [pin(one), read({ waistFrontArc: "38" }), read({ bustGirth: "90" }), read({ waistGirth: "72" })];
    expect(written(...work, read({ waistGirth: "73" }))[0]).toBe("bust girth 900; waist girth 730, frontArc 380");
  });
  test("not what was read over the cover, over a piece that came off again, or what is no length", () => {
    expect(written(pin(one), { did: "measured", readings: { waistGirth: "72" }, over: "cover", at })).toEqual(["", ""]);
    const off: WorkEntry = { did: "unpinned", pieceId: one.id, at };
    expect(written(pin(one), read({ waistGirth: "72" }), off, read({ waistGirth: "70" }))).toEqual(["", ""]);
    expect(written(pin(one), read({ waistGirth: "wide" }))).toEqual(["", ""]);
  });
});

describe("which sheets are printed unless somebody chooses", () => {
  test("every step and the cut drawings; the lines first as long as the bare form was not measured on them", () => {
    expect(usualSheets(true, false)).toEqual(["padding", "smallCutting"]);
    expect(usualSheets(true, true)).toEqual(["lines", "padding", "smallCutting"]);
    expect(usualSheets(false, false)).toEqual(["padding"]);
    expect(sheetKinds.filter((kind) => usualSheets(true, true).includes(kind))).toEqual(usualSheets(true, true));
  });
  test("large drawings are shared out among pages in order, and none is lost", () => {
    const cards = [...plan.pieces, ...plan.pieces].flatMap((piece) =>
      cutCards(piece, `Piece ${String(piece.order)}`, "Cut one.", lengthWriter("in"), "largePaper"),
    );
    const pages = cutPages(cards);
    expect(pages.flatMap(({ parts }) => parts.flatMap((part) => part.cards))).toEqual(cards);
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.length).toBeLessThan(cards.length);
  });
});

test("paper says whether how much a layer adds is a starting figure or from the tape", () => {
  expect(printingWords.layerAdds("6 mm", 0)).toBe("One layer may add about 6 mm under the tape, a starting figure.");
  expect(printingWords.layerAdds("5 mm", 4)).toContain("from 4 measurements");
});
