import { describe, expect, test } from "vitest";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { openQuestions, type QuestionId, questionIds } from "../../src/app/progress/questions";
import { levelNames } from "../../src/core/body/vocabulary";
import { mm } from "../../src/core/units";
import type { Fitting } from "../../src/document/fitting";
import { readFitting } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import threeGirths from "../../shared/demo/three-girths.json";

const at = "2026-01-02T03:04:05.000Z";
const everyOne = questionIds.map((id, i) => ({ id, gain: mm(20 - i) }));

function asked(fitting: Fitting) {
  const { planning, lengths } = derivation()(fitting);
  if (planning.kind !== "planned" || lengths === null) throw new Error("there is no plan");
  const known = { body: lengths.body, form: lengths.form.measured };
  return openQuestions(planning.plan, known, fitting, everyOne);
}
const ids = (fitting: Fitting): readonly QuestionId[] => asked(fitting).map(({ id }) => id);

function start(): Fitting {
  const read = readFitting(threeGirths);
  if (!read.ok) throw new Error("the sample person does not open");
  return read.value;
}

const typed = (fitting: Fitting, whose: "body" | "form", lengths: { readonly [name: string]: string }): Fitting =>
  Object.entries(lengths).reduce(
    (now, [name, text]) => apply(now, { does: "measure", whose, name: name as "bustGirth", text }),
    fitting,
  );

/** The bare form measured on every line: all around, and whatever else is named. */
const onLines = (fitting: Fitting, more: readonly ("Breadth" | "Depth")[] = []): Fitting =>
  levelNames.reduce((now, level) => {
    const read = (name: string, text: string, before: Fitting) =>
      apply(before, { does: "read", name: name as "bustGirth", text, at });
    return more.reduce((rest, part) => read(`${level}${part}`, "24 cm", rest), read(`${level}Girth`, "72 cm", now));
  }, fitting);

describe("what can still be asked", () => {
  test("is everything but the widths on lines that are not there, the nape first among the heights", () => {
    expect(ids(start())).toEqual(questionIds.filter((id) => id !== "formBreadths" && id !== "formDepths"));
    expect(asked(start()).find(({ id }) => id === "bodyHeights")?.first).toEqual({ whose: "body", name: "napeHeight" });
    expect(asked(start()).find(({ id }) => id === "formLines")?.first).toBeNull();
  });

  test("no tape over the body once the heights are there, from the floor or from the nape", () => {
    const heights = {
      napeHeight: "140",
      bustHeight: "117",
      underbustHeight: "110",
      waistHeight: "102",
      highHipHeight: "92",
    };
    const almost = typed(start(), "body", heights);
    expect(ids(almost)).toContain("bodyHeights");
    expect(asked(almost).find(({ id }) => id === "bodyHeights")?.first?.name).toBe("fullHipHeight");
    for (const last of [{ fullHipHeight: "83" }, { fullHipBelowNape: "57" }]) {
      const placed = ids(typed(almost, "body", last));
      expect(placed).not.toContain("bodyHeights");
      expect(placed).not.toContain("bodyLengths");
    }
  });

  test("nothing of the form's own once its lines are measured, and then their widths until they are", () => {
    const read = ids(onLines(start()));
    for (const id of ["formLines", "formGirths", "formHeights"] as const) expect(read).not.toContain(id);
    expect(read).toContain("formBreadths");
    const whole = ids(onLines(start(), ["Breadth", "Depth"]));
    expect(whole.filter((id) => id.startsWith("form"))).toEqual([]);
  });

  test("no lines any more once a piece lies on the form", () => {
    const { planning } = derivation()(start());
    const [piece] = planning.kind === "planned" ? planning.plan.pieces : [];
    if (piece === undefined) throw new Error("the sample person needs no piece");
    const pinned = apply(start(), {
      does: "record",
      entry: { did: "pinned", piece: pieceToFile(piece, "piece", "place"), at },
    });
    expect(ids(pinned)).not.toContain("formLines");
  });
});
