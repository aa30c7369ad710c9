import { fireEvent, render, screen, within } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { apply } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import { battingSupplies } from "../../src/app/supplies/fittingSupplies";
import type { BattingRole } from "../../src/core/material";
import { onlyBatting, pieceBatting } from "../../src/core/padding/piece";
import type { Plan } from "../../src/core/plan/plan";
import type { Fitting } from "../../src/document/fitting";
import { BattingLine } from "../../src/ui/kit/batting/BattingLine";
import { secondBatting } from "../../src/text/battingText";
import { step } from "../../src/app/steps/step";
import { StepStop } from "../../src/ui/pages/padding/StepStop";
import { OpenPiece } from "../../src/ui/pages/plan/OpenPiece";
import { PrintSheet } from "../../src/ui/kit/sheet/PrintSheet";
import { CutSheet } from "../../src/ui/pages/print/CutSheet";
import { battingGuesses, twoBattingNames } from "../../src/text/batting";
import { StoreProvider } from "../../src/ui/kit/useStore";

const cotton = { name: "needled cotton", layerThickness: "2.5 mm" } as const;
const two = apply(demoFitting, { does: "changeFinishingBatting", batting: cotton });

const planned = derivation()(demoFitting).planning;
if (planned.kind !== "planned") throw new Error("the demo has no plan");
/** The demo's plan with its last three pieces cut from the second batting, as a plan with two may have them. */
const plan: Plan = {
  ...planned.plan,
  pieces: planned.plan.pieces.map((piece, i, all) => ({
    ...piece,
    layers: piece.layers.map((layer) => ({
      ...layer,
      batting: i >= all.length - 3 ? ("finishing" as const) : layer.batting,
    })),
  })),
};

function shown(fitting: Fitting, parts: React.ReactNode) {
  const store = fittingStore(fitting);
  const { container } = render(<StoreProvider store={store}>{parts}</StoreProvider>);
  return { store, container, text: () => container.textContent ?? "" };
}

const fitting = ({ store }: ReturnType<typeof shown>): Fitting => store.getState().fitting;

test("a second batting is added, named, measured and taken away, each a step that undo goes back over", () => {
  const view = shown(demoFitting, <BattingLine plan={plan} />);
  fireEvent.click(screen.getByRole("button", { name: "Change the batting" }));
  expect(screen.queryByRole("group", { name: /second batting/ })).toBeNull();
  fireEvent.click(screen.getByRole("button", { name: "Add a second batting" }));
  const second = within(screen.getByRole("group", { name: /second batting/ }));
  fireEvent.change(second.getByRole("textbox", { name: "What it is called" }), { target: { value: "felt" } });
  const layer = second.getByRole("textbox", { name: /one layer/i });
  fireEvent.change(layer, { target: { value: "3 mm" } });
  fireEvent.blur(layer);
  expect(fitting(view).finishingBatting).toEqual({ name: "felt", layerThickness: "3 mm" });
  expect(fitting(view).batting).toEqual(demoFitting.batting);
  expect(view.text()).toContain("finished with felt");
  fireEvent.click(screen.getByRole("button", { name: "Remove the second batting" }));
  expect(fitting(view).finishingBatting).toBeUndefined();
  view.store.undo();
  expect(fitting(view).finishingBatting?.name).toBe("felt");
});

test("what cannot be read stays in the field as it was typed, and the second batting stays as it was", () => {
  const view = shown(two, <BattingLine plan={plan} />);
  fireEvent.click(screen.getByRole("button", { name: "Change the batting" }));
  const second = within(screen.getByRole("group", { name: /second batting/ }));
  const layer = second.getByRole("textbox", { name: /one layer/i });
  fireEvent.change(layer, { target: { value: "thin ish" } });
  fireEvent.blur(layer);
  expect(layer).toHaveValue("thin ish");
  expect(layer).toHaveAttribute("aria-invalid", "true");
  expect(fitting(view).finishingBatting).toEqual(cotton);
  fireEvent.click(second.getByRole("button", { name: "thin bonded batting" }));
  expect(second.getByRole("textbox", { name: /one layer/i })).not.toHaveValue("thin ish");
});

const places: { readonly [place: string]: React.ReactNode } = {
  plan: plan.pieces.map((piece) => <OpenPiece key={piece.id} plan={plan} piece={piece} onLarger={() => {}} />),
  "padding sheet": <PrintSheet plan={plan} />,
  "cut drawings": <CutSheet plan={plan} />,
};

test.each(Object.entries(places))("each piece of the %s says which of two battings it is cut from", (_, place) => {
  const { text } = shown(two, place);
  expect(text().split(/from needled cotton[:,]/)).toHaveLength(4);
  expect(text().split(new RegExp(`from ${demoFitting.batting.name}[:,]`))).toHaveLength(plan.pieces.length - 3 + 1);
});

test.each(Object.entries(places))("with one batting the %s does not say from which", (_, place) => {
  expect(shown(demoFitting, place).text()).not.toMatch(/Cut \w+ layers? from/);
});

test("the next action says which batting it is cut from, and only where there are two", () => {
  const piece = plan.pieces.at(-1) ?? null;
  const current = derivation()(two).step();
  if (current === null) throw new Error("there is no step");
  const cut = { ...current, plan, step: step("cut", { piece }) };
  const action = (of: Fitting) =>
    shown(of, <StepStop current={cut} isWorking={false} looked={null} onBack={() => {}} />).text();
  expect(action(two)).toContain("Cut from needled cotton.");
  expect(action(demoFitting)).not.toContain("Cut from");
});

test("each layer is laid on the batting that its piece is cut from, once", () => {
  const supplies = battingSupplies(plan, { ...two, work: [{ did: "trial", batting: "felt", level: "waist" }] });
  expect(supplies.map(({ role }) => role)).toEqual(["building", "finishing"]);
  for (const { role, shapes, layout } of supplies) {
    const own = plan.pieces.filter((piece) => pieceBatting(piece) === role);
    expect(shapes).toHaveLength(
      own.reduce((sum, { cut }) => sum + cut.filter((one) => one.shape !== "bought").length, 0),
    );
    const laid = layout.sheets.flatMap((sheet) => sheet.shapes.map(({ id }) => id));
    expect([...laid].sort()).toEqual(shapes.map(({ id }) => id).sort());
  }
  expect(onlyBatting(plan.pieces)).toBeNull();
  expect(onlyBatting(planned.plan.pieces)).toBe<BattingRole>("building");
  expect(onlyBatting([])).toBeNull();
});

test("two battings never share a name where a piece is cut, and never have none", () => {
  for (const [building, finishing] of [
    ["felt", "Felt"],
    ["", ""],
    ["", "felt"],
    ["wool", "felt"],
  ] as const) {
    const names = twoBattingNames(building, finishing);
    expect(names.building).not.toBe("");
    expect(names.finishing).not.toBe("");
    expect(names.building.toLowerCase()).not.toBe(names.finishing.toLowerCase());
  }
});

test("the second batting starts from the next thinner guess, or from the thinnest", () => {
  expect(secondBatting({ name: "x", layerThickness: "6 mm" }, "in").layerThickness).toBe("5/32 in");
  expect(secondBatting({ name: "x", layerThickness: "1/8" }, "in").layerThickness).toBe("3/32 in");
  expect(secondBatting({ name: "x", layerThickness: "1 mm" }, "cm").layerThickness).toBe(battingGuesses[0].layer.cm);
});

test("a layer that is no layer stops the plan, and can be put right there", () => {
  const wrong = apply(two, { does: "setLayer", role: "finishing", text: "60 mm" });
  const view = shown(wrong, <BattingLine plan={null} />);
  expect(view.text()).toContain("needled cotton");
  expect(view.text()).toContain("under a snug tape a layer is");
  expect(screen.getByRole("group", { name: /second batting/ })).toBeInTheDocument();
});
