import { cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { newFitting } from "../../src/app/session/newFitting";
import { PageState } from "../../src/ui/shell/PageState";
import { PrintedSheet } from "../../src/ui/shell/PrintedSheet";
import { FinishingPage } from "../../src/ui/pages/finishing/FinishingPage";
import { PlanPage } from "../../src/ui/pages/plan/PlanPage";
import { questionOrder } from "../../src/app/progress/questions";
import { questionsWords } from "../../src/text/questions";
import { finishingWords } from "../../src/text/finishing";
import { levelToMeasure } from "../../src/app/progress/levelToMeasure";
import { layerCount, numberedName } from "../../src/text/pieces";
import { markLinesWords } from "../../src/text/levelLines";
import { planningWords } from "../../src/text/planning";
import { levelWords } from "../../src/text/pictures";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { sampleBody, sampleInches } from "../support/sample";

const threeGirths: Fitting = {
  ...newFitting("in"),
  body: { bustGirth: "35", waistGirth: "30 1/2", fullHipGirth: "38" },
};

function shown(fitting: Fitting, parts: React.ReactNode = <PlanPage />) {
  const store = fittingStore(fitting);
  const { container } = render(<StoreProvider store={store}>{parts}</StoreProvider>);
  return { store, text: () => (container.textContent ?? "").replaceAll("\u00a0", " "), container };
}

/** Seen to fail: on a plan that said "Start padding" with a piece on the form. */
test("once a piece is pinned the plan goes on, and what comes before the first piece is gone", () => {
  const words = () => screen.queryAllByRole("link").map(({ textContent }) => textContent);
  const bare = shown(demoFitting);
  expect(words()).toContain(planningWords.toPadding);
  expect(bare.text()).toContain(markLinesWords.title);
  cleanup();
  const { planning } = derivation()(demoFitting);
  const [piece] = planning.kind === "planned" ? planning.plan.pieces : [];
  if (piece === undefined) throw new Error("no piece");
  const work = [{ did: "pinned", piece: pieceToFile(piece, "piece", "place") }] as const;
  const begun = shown({ ...demoFitting, work });
  expect(words()).toContain(planningWords.goOnPadding);
  expect(words()).not.toContain(planningWords.toPadding);
  expect(begun.text()).not.toContain(markLinesWords.title);
});

describe("what the plan rests on", () => {
  test("guesses: the lead says so, and what brings most is asked for, at most three, each with what it brings", () => {
    const { container } = shown(threeGirths);
    expect(container.querySelector(".lead")?.textContent).toContain(
      "if the estimates and the thickness of a layer are close",
    );
    const asked = [...container.querySelectorAll(".next-questions li")];
    expect(asked).toHaveLength(3);
    for (const one of asked) expect(one.textContent).toMatch(/about [\d\u00a0/]+in closer$/);
    const found = asked.map((one) =>
      questionOrder.findIndex(({ id }) => one.textContent?.startsWith(questionsWords.names[id])),
    );
    expect(found).toEqual(found.toSorted((a, b) => a - b));
    expect(found[0]).toBe(0);
  });

  test("where body and form are read throughout only the batting has to hold, and nothing more is asked", () => {
    const lines = (name: string, add = 0) => (sampleInches(name) + add).toFixed(3);
    const heights = {
      napeHeight: "56",
      bustHeight: "46",
      underbustHeight: "43",
      waistHeight: "40",
      highHipHeight: "36",
      fullHipHeight: "32",
    };
    const form = {
      ...demoFitting.form,
      readAtBodyLines: true as const,
      bustGirth: "33",
      underbustGirth: "28 1/2",
      waistGirth: "26",
      highHipGirth: "31 1/2",
      fullHipGirth: "35",
      bustFrontArc: "17 1/2",
      underbustFrontArc: "14 3/4",
      waistFrontArc: "13 1/2",
      highHipFrontArc: "15 3/4",
      fullHipFrontArc: "17 1/4",
    };
    const fronts = {
      underbustFrontArc: lines("underbustGirth", -sampleInches("underbustGirth") / 2),
      highHipFrontArc: lines("highHipGirth", -sampleInches("highHipGirth") / 2),
    };
    const { container } = shown({ ...demoFitting, body: { ...demoFitting.body, ...heights, ...fronts }, form });
    expect(container.querySelector(".lead")?.textContent).toContain(", if the thickness of a layer is close");
  });

  test("every figure nobody read has the word for it beside it", () => {
    const { container } = shown(threeGirths);
    const counts = levelButtons().map((button) => {
      fireEvent.click(button);
      const cells = [...container.querySelectorAll(".figures-table tbody td")];
      const guessed = cells.filter((cell) => cell.querySelector(".length-guess") !== null);
      for (const cell of guessed) expect(cell.textContent).toMatch(/estimated/);
      expect(screen.getAllByRole("columnheader", { name: "form now (estimated)" })).toHaveLength(1);
      return guessed.length;
    });
    expect(counts).toHaveLength(5);
    expect(counts.reduce((sum, count) => sum + count)).toBeGreaterThan(15);
  });

  test("a form that was measured is not supposed", () => {
    shown(demoFitting);
    expect(screen.queryByRole("columnheader", { name: "form now (estimated)" })).toBeNull();
    for (const button of levelButtons()) {
      fireEvent.click(button);
      expect(screen.getAllByRole("columnheader", { name: "form now" })).toHaveLength(1);
    }
  });
});

describe("the pieces", () => {
  /** Broken on purpose: the tile's piece left open whatever was pressed. Seen to fail. */
  test("each has its place in the strip, with its layers and what the tape reads after it; a press opens its cut drawing", () => {
    const { container } = shown(demoFitting);
    const { planning } = derivation()(demoFitting);
    if (planning.kind !== "planned") throw new Error("no plan");
    const { pieces } = planning.plan;
    const tiles = within(screen.getByRole("list", { name: "Pieces, in the order of pinning" })).getAllByRole("button");
    expect(tiles).toHaveLength(pieces.length);
    pieces.forEach((piece, i) => {
      const [tile] = tiles.slice(i);
      if (tile === undefined) throw new Error("no tile");
      expect(tile.textContent).toContain(layerCount(piece.layers.length));
      expect(tile.textContent).toContain(levelWords[levelToMeasure(planning.plan, piece)]);
      fireEvent.click(tile);
      expect(tile).toHaveAttribute("aria-pressed", "true");
      const open = container.querySelector(".open-piece");
      expect(open?.querySelector("h2")?.textContent).toBe(numberedName(piece));
      expect(open?.querySelectorAll(".segment")).toHaveLength(piece.layers.length < 2 ? 0 : piece.layers.length);
    });
  });
});

const levelButtons = () =>
  within(screen.getByRole("group", { name: "Which level line is shown" })).getAllByRole("button");

describe("a draft", () => {
  test("says so with what it may miss by, and leads to the lines before the padding", () => {
    const { text, container } = shown(threeGirths);
    expect(text()).toMatch(/This plan is a draft: measurements may come out up to [\d /]+ in off/);
    const [main] = container.querySelectorAll(".patch-main");
    expect(main?.getAttribute("href")).toBe("#padding/lines");
    const sheet = shown(threeGirths, <PrintedSheet />);
    expect(sheet.text()).toMatch(/Level lines on the form.*This plan is a draft.*Padding sheet.*This plan is a draft/);
  });

  test("is one no more once the bare form was read on the lines, on the screen and on paper", () => {
    const firm: Fitting = {
      ...demoFitting,
      form: {
        ...demoFitting.form,
        readAtBodyLines: true,
        bustGirth: "33",
        underbustGirth: "28 1/2",
        waistGirth: "26",
        highHipGirth: "31 1/2",
        fullHipGirth: "35",
      },
    };
    expect(shown(firm).text()).not.toContain("draft");
    expect(shown(firm, <PrintedSheet />).text()).not.toMatch(/draft|Level lines on the form/);
  });

  test("with a piece on says how the work makes up for it, and no longer leads to the bare form", () => {
    const { planning } = derivation()(demoFitting);
    const [piece] = planning.kind === "planned" ? planning.plan.pieces : [];
    if (piece === undefined) throw new Error("the sample person needs no piece");
    const pinned = apply(demoFitting, {
      does: "record",
      entry: { did: "pinned", piece: pieceToFile(piece, "piece", "place"), at: "2026-01-02T03:04:05.000Z" },
    });
    const { text } = shown(pinned);
    expect(text()).toContain("Measure each line after every piece");
    expect(screen.queryByRole("link", { name: "Mark the lines and measure the bare form" })).toBeNull();
  });
});

describe("the form and the batting", () => {
  test("a form the tool chose is supposed in the rail and asked for on the plan, until it is chosen", () => {
    const rail = shown(threeGirths, <PageState page="form" />);
    expect(rail.text()).toMatch(/^size \d+, estimated$/);
    const { store, text } = shown(threeGirths);
    expect(text().split("Which form do you have?")).toHaveLength(2);
    expect(screen.getByRole("link", { name: "Say which form it is" })).toHaveAttribute("href", "#form");
    store.dispatch({ does: "chooseForm", table: "misses", size: "8" });
    expect(shown(store.getState().fitting, <PageState page="form" />).text()).toBe("size 8");
    expect(shown(store.getState().fitting).text()).not.toContain("Which form do you have?");
  });

  test("a batting nobody chose is supposed and asked for before the pieces; one tap answers", () => {
    const { store, text } = shown(threeGirths);
    expect(text().indexOf("Which batting do you have?")).toBeGreaterThan(0);
    expect(text().indexOf("Which batting do you have?")).toBeLessThan(text().indexOf("Waist wrap"));
    const question = within(screen.getByRole("group", { name: "Which batting do you have?" }));
    fireEvent.click(question.getByRole("button", { name: "bonded batting" }));
    expect(store.getState().fitting.batting.name).toBe("bonded batting");
    expect(text()).not.toContain("Which batting do you have?");
    expect(text()).toContain("Worked out for bonded batting");
  });

  test("a batting tried under the tape is no longer supposed", () => {
    const trial = { batting: "usual batting", level: "waist", plies: 1, before: "28", after: "29 1/2" } as const;
    const tried: Fitting = { ...threeGirths, work: [{ did: "trial", ...trial }] };
    expect(shown(tried).text()).not.toContain("Which batting do you have?");
  });
});

describe("before the first piece", () => {
  test("the lines to mark stand there in the person's unit, and what to have ready", () => {
    const inches = shown(demoFitting).text();
    expect(inches).toMatch(
      /Mark five level lines on the form, straight down from the nape: bust [\d /]+ in, underbust/,
    );
    expect(inches).toMatch(/Bonded batting: [\d\s/]+\syd of a roll 90\sin wide/);
    expect(inches).toMatch(/The largest is [\d /]+ in long, [\d /]+ in high/);
    const centimetres = shown({
      ...threeGirths,
      unit: "cm",
      body: { bustGirth: 90, waistGirth: 78, fullHipGirth: 97 },
    });
    expect(centimetres.text()).toMatch(/straight down from the nape: bust [\d.]+ cm, underbust/);
  });
});

describe("the rail beside the padding", () => {
  test("every piece pinned is not yet every level read", () => {
    const derived = derivation()(demoFitting);
    if (derived.planning.kind !== "planned") throw new Error("no plan");
    const { pieces } = derived.planning.plan;
    const pinned = pieces.reduce(
      (fitting, piece) =>
        apply(fitting, { does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } }),
      demoFitting,
    );
    expect(shown(demoFitting, <PageState page="padding" />).text()).toBe(`0 of ${pieces.length} pinned`);
    expect(shown(pinned, <PageState page="padding" />).text()).toBe("all pinned, 0 of 5 lines measured");
    const waist = apply(pinned, { does: "read", name: "waistGirth", text: sampleBody("waistGirth"), at });
    expect(shown(waist, <PageState page="padding" />).text()).toBe("all pinned, 1 of 5 lines measured");
  });
});

const at = "2026-01-10T10:00:00.000Z";

describe("what to have", () => {
  // A plan that uses both.
  const twoBattings: Fitting = {
    ...newFitting("cm"),
    body: { bustGirth: "122", waistGirth: "112", fullHipGirth: "132" },
    form: { bustGirth: "106", waistGirth: "88", fullHipGirth: "114" },
    batting: { name: "thin wadding", layerThickness: "6 mm" },
    finishingBatting: { name: "wool felt", layerThickness: "3 mm" },
  };
  const amounts = (parts: React.ReactNode, fitting: Fitting): readonly string[] =>
    shown(fitting, parts)
      .text()
      .replaceAll("\u00a0", " ")
      .match(/[\d /.]+ (?:yd|m) of a roll \d+ (?:in|cm) wide/g) ?? [];

  /** Broken on purpose: the paper laid out on another roll. Seen to fail. */
  test("plan, finishing and paper ask for as much of each batting, each of two by its own name", () => {
    for (const fitting of [demoFitting, twoBattings]) {
      const planned = amounts(<PlanPage />, fitting);
      expect(planned.length).toBe(fitting.finishingBatting === undefined ? 1 : 2);
      expect(amounts(<FinishingPage />, fitting)).toEqual(planned);
      // The head of the first page; one that goes on overleaf says it again there.
      expect(amounts(<PrintedSheet />, fitting).slice(0, planned.length)).toEqual(planned);
    }
    const both = shown(twoBattings, <FinishingPage />).text();
    expect(both).toMatch(/Thin wadding: .*Wool felt: /s);
  });

  test("the padding sheet says what finishing takes in the words of the finishing, and has room to count pins", () => {
    const paper = shown(demoFitting, <PrintedSheet />).text();
    expect(paper).toContain(finishingWords.count);
    expect(paper).toContain(`Cut it ${sampleBody("waistGirth", 1)} in long`);
    expect(paper).toMatch(/Pins in +pins out/);
  });
});
