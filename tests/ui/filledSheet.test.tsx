import { upperFirst } from "../../src/text/upperFirst";
import { fireEvent, render, screen, within } from "@testing-library/react";
import { describe, expect, test, vi } from "vitest";
import demoFile from "../../shared/demo-fitting.json";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import { workFacts } from "../../src/app/steps/workFacts";
import { isAllRead, workState } from "../../src/app/steps/workState";
import { basisOf } from "../../src/app/progress/replay";
import { isStructure } from "../../src/core/padding/piece";
import { pieceFromWork } from "../../src/document/fitting";
import { Announcer } from "../../src/ui/kit/Announcer";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { FilledSheet } from "../../src/ui/pages/padding/FilledSheet";
import { filledSheetWords } from "../../src/text/filledSheet";
import { numberedName } from "../../src/text/pieces";
import { levelWords } from "../../src/text/pictures";
import { fittingOf } from "../tools/commandWalk";

vi.setConfig({ testTimeout: 60_000 });

const demo = fittingOf(demoFile);
const derived = derivation()(demo);
if (derived.planning.kind !== "planned" || derived.input === null) throw new Error("no plan");
const { plan } = derived.planning;
const structure = plan.pieces.filter(isStructure);
const tuning = plan.pieces.filter((piece) => !isStructure(piece));
const levels = ["Bust", "Underbust", "Waist", "High hip", "Full hip"];

function shown(fitting = demo) {
  const store = fittingStore(fitting);
  render(
    <StoreProvider store={store}>
      <Announcer>
        <FilledSheet plan={plan} />
      </Announcer>
    </StoreProvider>,
  );
  return { store, work: () => store.getState().fitting.work };
}

const tick = (name: string) => fireEvent.click(screen.getByRole("checkbox", { name }));
const group = (name: string) => within(screen.getByRole("group", { name }));
const type = (moment: keyof typeof filledSheetWords.moments, label: string, text: string) =>
  fireEvent.change(group(filledSheetWords.moments[moment]).getByLabelText(new RegExp(`^${label} [a-z]+$`, "i")), {
    target: { value: text },
  });
const take = () => screen.getByRole("button", { name: filledSheetWords.take }) as HTMLButtonElement;

describe("a padding sheet that was filled in on paper", () => {
  /**
   * Seen to fail: the readings in the end noted before the tuning layers; the layers of the plan noted instead of those that were cut.
   */
  test("is taken in at once as if every step had been noted, and goes at one undo", () => {
    const { store, work } = shown();
    for (const piece of [...structure, ...tuning]) tick(numberedName(piece));
    const [first] = structure;
    if (first === undefined) throw new Error("no structure");
    const cut = first.layers.length + 1;
    fireEvent.change(screen.getByLabelText(filledSheetWords.layers(numberedName(first))), { target: { value: cut } });
    for (const level of levels) {
      type("structure", `${level}, all around`, "34");
      type("end", `${level}, all around`, "35 1/2");
    }
    type("end", "Waist, front", "17 1/4");
    tick(filledSheetWords.basted);
    fireEvent.click(take());
    const log = work().slice(demo.work.length);
    expect(log.map(({ did }) => did)).toEqual([
      ...structure.flatMap(() => ["cut", "pinned"]),
      "linesCarried",
      "measured",
      ...tuning.flatMap(() => ["cut", "pinned"]),
      "measured",
      "basted",
    ]);
    const pinned = log.flatMap((entry) => (entry.did === "pinned" ? [pieceFromWork(entry.piece)] : []));
    expect(pinned.map(({ layers }) => layers.length)).toEqual(
      [...structure, ...tuning].map(({ layers }, i) => (i === 0 ? cut : layers.length)),
    );
    const last = log.findLast(({ did }) => did === "measured");
    expect(last).toMatchObject({ readings: { waistGirth: "35 1/2", waistFrontArc: "17 1/4" } });
    if (derived.input === null) throw new Error("no plan");
    const state = workState(workFacts(work(), basisOf(derived.input).depths));
    expect([isAllRead(state), state.basted.size]).toEqual([true, plan.pieces.length]);
    expect(Object.keys(store.getState().fitting.drafts.other)).toEqual([]);
    store.undo();
    expect(work()).toEqual(demo.work);
  });

  /**
   * Seen to fail: the tool asked for a back full hip tuning layer while every line read within a quarter inch; a reading just a quarter inch off
   * was none of them.
   */
  test.each([
    ["as expected", 0, tuning],
    ["a quarter inch off", 0.25, tuning],
    ["less than that off, one tuning layer left out", 0.125, tuning.slice(0, 1)],
  ])(
    "where every line reads within a quarter inch in the end (%s), the padding is left as it is",
    (_, off, slipped) => {
      const { store } = shown();
      for (const piece of [...structure, ...slipped]) tick(numberedName(piece));
      const inches = (length: number) => String(Math.round((8 * length) / 25.4) / 8);
      const after = structure.at(-1)?.readingsAfter ?? plan.bareForm;
      plan.levels.forEach(({ name, body }, i) => {
        const label = upperFirst(levelWords[name]);
        const by = (i % 2 === 0 ? -off : off) * 25.4;
        type("structure", `${label}, all around`, inches(after[name].girth));
        type("structure", `${label}, front`, inches(after[name].frontArc));
        type("end", `${label}, all around`, inches(body.girth.value + by));
        type("end", `${label}, front`, inches(body.frontArc.value - by / 2));
      });
      fireEvent.click(take());
      const step = derivation()(store.getState().fitting).step()?.step;
      expect(step?.do).toBe("baste");
    },
  );

  /** Seen to fail: the cover's readings taken for the padding's; a cover that was never said to be on. */
  test("what was read over the cover says that the cover is on, and the work goes on from there", () => {
    const { store, work } = shown();
    const inches = (length: number) => String(Math.round((8 * length) / 25.4) / 8);
    for (const piece of [...structure, ...tuning]) tick(numberedName(piece));
    tick(filledSheetWords.basted);
    for (const { name, body } of plan.levels) {
      const label = upperFirst(levelWords[name]);
      for (const moment of ["end", "cover"] as const) {
        type(moment, `${label}, all around`, inches(body.girth.value));
        type(moment, `${label}, front`, inches(body.frontArc.value));
      }
    }
    fireEvent.click(take());
    expect(
      work()
        .slice(-7)
        .map((entry) => (entry.did === "made" ? entry.what : entry.did)),
    ).toEqual(["looked", "coverChosen", "coverCut", "coverSewn", "coverFitted", "coverClosed", "measured"]);
    expect(work().at(-1)).toMatchObject({ over: "cover" });
    const next = derivation()(store.getState().fitting).step()?.step.do;
    expect(next).toBe("hem-cover");
    type("cover", "Waist, all around", "30");
    fireEvent.click(take());
    // The cover is on already, and is not said to be made again.
    expect(work().slice(-2)).toMatchObject([{ did: "measured" }, { did: "measured", over: "cover" }]);
    store.undo();
    store.undo();
    expect(work()).toEqual(demo.work);
  });

  /** Seen to fail: on the usual cover, whatever was bought. */
  test("the cover that was chosen when its fabric was bought is the one that is on", () => {
    const { work } = shown({ ...demo, supplies: { ...demo.supplies, cover: { cloth: "woven" } } });
    type("cover", "Waist, all around", "30");
    fireEvent.click(take());
    expect(work().find(({ did }) => did === "coverChosen")).toMatchObject({ cloth: "woven" });
  });

  /** Seen to fail: with the trial noted after the pieces, where it teaches nothing of the layers they were cut of. */
  test("the trial's two readings are noted before everything else, and one alone is not taken in", () => {
    const { work } = shown();
    const field = (label: string) => group(filledSheetWords.trial).getByLabelText(new RegExp(`^${label}`));
    fireEvent.change(field(filledSheetWords.ofTrial.bare), { target: { value: "24" } });
    expect(take().disabled).toBe(true);
    fireEvent.change(field(filledSheetWords.ofTrial.strip), { target: { value: "28 1/2" } });
    for (const piece of structure) tick(numberedName(piece));
    fireEvent.click(take());
    const [first, second] = work().slice(demo.work.length);
    expect(first).toMatchObject({ did: "trial", level: "waist", layers: 3, before: "24", after: "28 1/2" });
    expect(second?.did).toBe("cut");
    expect(screen.queryByRole("group", { name: filledSheetWords.trial })).toBeNull();
  });

  test("a figure that cannot be read is kept in its field, and nothing is taken in", () => {
    const { store, work } = shown();
    expect(take().disabled).toBe(true);
    type("end", "Waist, all around", "thirty");
    expect(take().disabled).toBe(true);
    expect(screen.getByText(filledSheetWords.unclear)).toBeTruthy();
    expect(Object.values(store.getState().fitting.drafts.other)).toEqual(["thirty"]);
    expect(work()).toEqual(demo.work);
  });
});
