import { fireEvent, render, screen, waitFor } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { type FittingStore, fittingStore } from "../../src/app/session/store";
import { assert } from "../../src/core/result";
import { pieceToFile } from "../../src/document/pieceFile";
import { FinishingPage } from "../../src/ui/pages/finishing/FinishingPage";
import { StoreProvider } from "../../src/ui/kit/useStore";

const at = "2026-01-02T03:04:05.000Z";
const { planning } = derivation()(demoFitting);
assert(planning.kind === "planned", "the demo can be planned");
const { pieces } = planning.plan;

const shown = (): FittingStore => {
  const store = fittingStore(demoFitting);
  for (const piece of pieces.slice(0, 3))
    store.dispatch({ does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } });
  render(
    <StoreProvider store={store}>
      <FinishingPage />
    </StoreProvider>,
  );
  return store;
};
const girthField = () => {
  const [field] = screen.getAllByRole<HTMLInputElement>("textbox", { name: /all around/ });
  assert(field !== undefined, "the girth has a field");
  return field;
};

/** Seen to fail: the field was empty of what was typed, and the page went white. */
test("a reading that is not possible stays in its field as it was typed, marked, with what can be", async () => {
  const store = shown();
  for (const _ of [1, 2]) {
    fireEvent.change(girthField(), { target: { value: "" } });
    fireEvent.change(girthField(), { target: { value: "381/2" } });
    fireEvent.blur(girthField());
  }
  await waitFor(() => expect(girthField().value).toBe("381/2"));
  expect(girthField().getAttribute("aria-invalid")).toBe("true");
  const note = document.getElementById(girthField().getAttribute("aria-describedby")?.split(" ")[0] ?? "");
  expect(note?.textContent).toMatch(/Not possible here, so not used: the tape can read .* to .* Measure again/);
  expect(store.getState().fitting.work.filter(({ did }) => did === "measured")).toHaveLength(2);

  fireEvent.change(girthField(), { target: { value: "36" } });
  expect(girthField().getAttribute("aria-invalid")).toBe("false");
  fireEvent.blur(girthField());
  await waitFor(() => expect(girthField().value).toBe("36"));
});

/** Seen to fail: the Enter that ends the composing of a character handed in half a length. */
test("Enter while a character is being composed belongs to the input method", () => {
  const store = shown();
  fireEvent.change(girthField(), { target: { value: "3" } });
  fireEvent.keyDown(girthField(), { key: "Enter", isComposing: true });
  expect(store.getState().fitting.work.some(({ did }) => did === "measured")).toBe(false);
  fireEvent.change(girthField(), { target: { value: "36" } });
  fireEvent.keyDown(girthField(), { key: "Enter" });
  expect(store.getState().fitting.work.at(-1)).toMatchObject({ did: "measured" });
});
