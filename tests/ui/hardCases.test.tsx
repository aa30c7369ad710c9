import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, test, vi } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { measuredAgain } from "../../src/app/session/measuredAgain";
import { plannedSteps } from "../../src/app/steps/plannedSteps";
import { nothingDone } from "../../src/app/steps/workState";
import { fittingStore } from "../../src/app/session/store";
import { nextOfFitting, nextOfText } from "../../src/command/nextOfText";
import { planOfText } from "../../src/command/planOfText";
import { type Fitting, type WorkEntry, writeFitting } from "../../src/document/fitting";

import { readFitting } from "../../src/document/readFitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { newFitting } from "../../src/app/session/newFitting";
import { PrintedSheet } from "../../src/ui/shell/PrintedSheet";
import { BodyPage } from "../../src/ui/pages/body/BodyPage";
import { FormPage } from "../../src/ui/pages/form/FormPage";
import { PlanPage } from "../../src/ui/pages/plan/PlanPage";
import { planningWords } from "../../src/text/planning";
import { printingWords } from "../../src/text/printing";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { ClassPage } from "../../src/ui/pages/class/ClassPage";

// Whole plans and walks of the command.
vi.setConfig({ testTimeout: 60_000 });

const body = { bustGirth: "36", waistGirth: "30", fullHipGirth: "39" };
const plain: Fitting = { ...newFitting("in"), body, form: { table: "misses", size: "6" } };

function shown(fitting: Fitting, parts: React.ReactNode = <PlanPage />) {
  const store = fittingStore(fitting);
  const { container } = render(<StoreProvider store={store}>{parts}</StoreProvider>);
  return { store, container, text: () => (container.textContent ?? "").replaceAll("\u00a0", " ") };
}
const commandText = (fitting: Fitting) => JSON.stringify(writeFitting(fitting));
function next(fitting: Fitting) {
  const found = nextOfFitting(fitting);
  if (!found.ok) throw new Error(found.problem.join(" "));
  const { step } = found.value;
  return { ...found.value, step: { ...step, say: step.say.replaceAll("\u00a0", " ") } };
}
function planned(fitting: Fitting) {
  const { planning } = derivation()(fitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  return planning.plan;
}

describe("a form larger than the body", () => {
  const everywhere: Fitting = { ...plain, form: { bustGirth: "40", waistGirth: "34", fullHipGirth: "44" } };
  const hip: Fitting = { ...plain, form: { bustGirth: "33", waistGirth: "26", fullHipGirth: "44" } };

  test.each([
    ["everywhere", everywhere],
    ["at the hip", hip],
  ])("%s: the plan says so before anything else, with what to do, and never that nothing is missing", (_, fitting) => {
    const { text, container } = shown(fitting);
    const at = text().search(/The form is [\d /]+ in larger than the person at the/);
    expect(at).toBeGreaterThan(0);
    const lead = container.querySelector(".lead")?.textContent ?? "";
    expect(at).toBeLessThan(text().indexOf(lead.replaceAll("\u00a0", " ")));
    expect(text()).toMatch(/Choose a smaller form, turn the dial in/);
    expect(text()).not.toContain(planningWords.nothing);
    expect(screen.getByRole("link", { name: planningWords.otherForm })).toHaveAttribute("href", "#form");
    const paper = shown(fitting, <PrintedSheet />).text();
    expect(paper).toMatch(/The form is [\d /]+ in larger than the person at the/);
    expect(paper).not.toContain(printingWords.none);
  });

  test("the command says so at the first step and at the end", () => {
    const first = next(everywhere);
    expect(first.step.do).toBe("prepare-form");
    expect(first.step.say).toMatch(
      /^Look at the form’s size first\. The form is [\d /]+ in larger than the person at the /,
    );
    const lines: WorkEntry[] = [
      { did: "prepared", what: "form" },
      { did: "marked" },
      { did: "measured", readings: {} },
    ];
    const last = next({ ...everywhere, work: lines });
    expect(last.step.do).toBe("done");
    expect(last.step.say).toMatch(/larger than the person at the/);
    expect(last.rest.shortfalls.length).toBeGreaterThan(0);
  });

  test("a form smaller than the body is not spoken of so", () => {
    expect(next(plain).step.say).toMatch(/^Make the form ready/);
    expect(shown(plain).text()).not.toMatch(/larger than the person/);
  });
});

describe("one half that is padded too much", () => {
  /** Every piece of the structure on, and the front of the waist read 20 mm over the person. */
  const plan = planned(demoFitting);
  const structure = plan.pieces.filter(({ kind }) => kind !== "tuning");
  const before = structure.at(-1)?.readingsAfter ?? plan.bareForm;
  const waist = plan.levels.find(({ name }) => name === "waist")?.body;
  const readings = Object.fromEntries(
    plan.levels.flatMap(({ name }) => {
      const { girth, frontArc } = before[name];
      const over = name === "waist" ? (waist?.frontArc.value ?? 0) + 20 - frontArc : 0;
      return [
        [`${name}Girth`, `${String(girth + over)} mm`],
        [`${name}FrontArc`, `${String(frontArc + over)} mm`],
      ];
    }),
  );
  const over: Fitting = {
    ...demoFitting,
    work: [
      ...structure.map((piece): WorkEntry => ({ did: "pinned", piece: pieceToFile(piece, "piece", "place") })),
      { did: "measured", readings },
    ],
  };

  test("is told as padding that is narrowed, never as a form that is too large", () => {
    const { rest, step } = next(over);
    const said = [step.say, ...rest.shortfalls.map(({ advice }) => advice)].join(" ");
    const tooMuch = rest.shortfalls.filter(({ sense }) => sense === "tooLarge");
    expect(tooMuch.length).toBeGreaterThan(0);
    expect(said).toMatch(/The padding in front at the waist is .* over\. Narrow or take out/);
    expect(said).not.toMatch(/smaller form|turn the dial/);
  });

  test("and so say plan and paper once the rest is planned anew", () => {
    const anew: Fitting = { ...over, work: [...over.work, { did: "replanned" }] };
    expect(planned(anew).shortfalls.some(({ sense }) => sense === "tooLarge")).toBe(true);
    for (const parts of [<PlanPage key="plan" />, <PrintedSheet key="paper" />])
      expect(shown(anew, parts).text()).not.toMatch(/smaller form|turn the dial/);
  });
});

describe("level lines that lie close together", () => {
  const asked = (more: Fitting["body"]) => {
    const fitting = { ...plain, body: { ...body, ...more } };
    const plan = planOfText(commandText(fitting));
    if (!plan.ok) throw new Error(plan.problem.join(" "));
    const { problems } = derivation()(fitting);
    const screen = shown(fitting).text();
    return { screen, codes: problems.measurements.map(({ code }) => code), said: plan.value.pleaseCheck.join(" ") };
  };

  test.each([
    ["closer than 10 mm", { bustBelowNape: "9", underbustBelowNape: "9 5/16", waistBelowNape: "15" }],
    [
      "a bust line 34 mm above the waist, above the floor",
      { napeHeight: "1400 mm", bustHeight: "1054 mm", waistHeight: "1020 mm" },
    ],
    ["a bust line 34 mm above the waist, below the nape", { bustBelowNape: "346 mm", waistBelowNape: "380 mm" }],
  ])("%s are asked about, and hinder nothing", (_, more) => {
    const { codes, said, screen } = asked(more);
    expect(screen).toMatch(/put two lines only [\d /]+ in apart/);
    expect(codes).toContain("linesClose");
    expect(said).toMatch(/put two lines only [\d /]+ in apart/);
  });

  test("lines as far apart as they are on most bodies are not", () => {
    expect(asked({ bustBelowNape: "9 3/4", underbustBelowNape: "12 1/4", waistBelowNape: "15 1/2" }).codes).toEqual([]);
  });
});

describe("figures that are possible and unusual", () => {
  test("a waist of 60 in the inch field is questioned where it was typed, and one tap puts it right", () => {
    const { store, text } = shown({ ...plain, body: { ...body, waistGirth: "60" } }, <BodyPage />);
    expect(text()).toMatch(/60 in reads like centimeters typed as inches/);
    fireEvent.click(screen.getAllByRole("button", { name: /centimeters/ })[0] as HTMLElement);
    expect(store.getState().fitting.body.waistGirth).toMatch(/60 cm|23/);
    expect(derivation()(store.getState().fitting).planning.kind).toBe("planned");
  });

  test.each([
    ["no size chart", {}],
    ["a size chart whose size the tool chooses", { table: "misses" }],
    ["a size of a chart", { table: "misses", size: "6" }],
  ])("a form bust of 97 in the inch field likewise, with %s", (_, chart) => {
    const form = { ...chart, bustGirth: "97", waistGirth: "26", fullHipGirth: "36" };
    const { store, text } = shown({ ...plain, form }, <FormPage />);
    expect(text()).toMatch(/97 in reads like centimeters typed as inches/);
    const plan = planOfText(commandText({ ...plain, form }));
    expect(plan.ok ? "" : plan.problem.join(" ")).toMatch(/97.in reads like centimeters typed as inches/);
    fireEvent.click(screen.getAllByRole("button", { name: /centimeters/ })[0] as HTMLElement);
    expect(store.getState().fitting.form.bustGirth).toMatch(/97 cm|38/);
  });

  test("a form bust of 97 beside a body of 92 is possible, and its plan says first what that means", () => {
    const cm: Fitting = {
      ...newFitting("cm"),
      body: { bustGirth: 92, waistGirth: 76, fullHipGirth: 99 },
      form: { bustGirth: 97, waistGirth: 66, fullHipGirth: 91 },
    };
    const { text } = shown(cm);
    expect(text().indexOf("The form is 5 cm larger than the person at the bust")).toBeGreaterThan(0);
    expect(next(cm).step.say).toMatch(/^Look at the form’s size first\. The form is 5 cm larger/);
  });
});

describe("the same person measured again", () => {
  test("nothing of the old measurements stays beside the new ones; what is pinned stays", () => {
    const [piece] = planned(demoFitting).pieces;
    if (piece === undefined) throw new Error("no piece");
    const work: WorkEntry[] = [{ did: "pinned", piece: pieceToFile(piece, "piece", "place") }];
    const again = measuredAgain({ ...demoFitting, id: "old", work }, "Marta, May");
    expect(again.body).toEqual({});
    expect(again).not.toHaveProperty("id");
    expect([again.work, again.form, again.batting]).toEqual([work, demoFitting.form, demoFitting.batting]);
    const { planning, problems } = derivation()(again);
    expect(planning.kind).toBe("waiting");
    expect(problems.measurements.map(({ code }) => code)).toContain("missing");
    const thinner: Fitting = { ...again, body: { bustGirth: "35", waistGirth: "30", fullHipGirth: "37" } };
    const levels = planned(thinner).levels.map(({ body: known }) => known);
    expect(levels[1]?.girth.kind).toBe("estimated");
    expect(levels[2]?.frontArc.kind).toBe("estimated");
  });
});

describe("a chest without cups", () => {
  const chest: Fitting = {
    ...newFitting("in"),
    title: "Sam",
    body: { bustGirth: "43", underbustGirth: "40", waistGirth: "38", highHipGirth: "40", fullHipGirth: "42" },
    form: { bustGirth: "38", underbustGirth: "34 1/2", waistGirth: "33", highHipGirth: "36", fullHipGirth: "38" },
  };
  const cups = /\bcups?\b/i;

  test("is planned, printed and shown to a class without a word about cups", () => {
    expect(planned(chest).pieces.some(({ kind }) => kind === "cup")).toBe(false);
    expect(shown(chest).text()).not.toMatch(cups);
    expect(shown(chest, <PrintedSheet />).text()).not.toMatch(cups);
    const { text } = shown(chest, <ClassPage />);
    fireEvent.keyDown(window, { key: "c" });
    for (let i = 0; i < 30; i++) {
      expect(text()).not.toMatch(cups);
      fireEvent.keyDown(window, { key: "PageDown" });
    }
  });

  test("and neither the command nor what is read aloud has one", () => {
    const plan = planOfText(commandText(chest));
    const first = nextOfText(commandText(chest));
    expect([plan.ok, first.ok]).toEqual([true, true]);
    expect(JSON.stringify([plan, first])).not.toMatch(/\bcup( pads?)?\b(?!")/i);
    expect(
      plannedSteps({ plan: planned(chest), state: nothingDone, isAtLines: false, hasArm: false, above: [] }).length,
    ).toBeGreaterThan(10);
  });
});

describe("a file that names no batting", () => {
  const { batting: _, ...unnamed } = writeFitting(plain) as Record<string, unknown>;

  test.each(["in", "cm"] as const)("plans with the starting one of its unit (%s), and the plan says so", (unit) => {
    const file = { ...unnamed, unit, body: { bustGirth: "36 in", waistGirth: "30 in", fullHipGirth: "39 in" } };
    const plan = planOfText(JSON.stringify(file));
    if (!plan.ok) throw new Error(plan.problem.join(" "));
    expect(plan.value.pieces.length).toBeGreaterThan(2);
    expect(plan.value.pleaseCheck.join(" ")).toMatch(
      /Nobody has said which batting there is: the plan is for usual batting/,
    );
    const step = nextOfText(JSON.stringify(file));
    expect(step.ok && step.value.layer.batting).toBe("usual batting");
    const fitting = readFitting(file);
    if (!fitting.ok) throw new Error("it cannot be read");
    expect(shown(fitting.value).text()).toMatch(/Not chosen yet; for now the plan assumes usual batting/);
    expect(shown(fitting.value, <PrintedSheet />).text()).toMatch(/Batting: usual batting.*a starting figure/);
  });

  test("a batting that was named is not spoken of so", () => {
    const plan = planOfText(commandText(demoFitting));
    expect(plan.ok && plan.value.pleaseCheck.join(" ")).not.toMatch(/Nobody has said/);
  });
});
