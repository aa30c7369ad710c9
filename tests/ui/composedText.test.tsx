import { fireEvent, render, screen } from "@testing-library/react";
import { expect, test, vi } from "vitest";
import type { LengthFieldState } from "../../src/app/session/lengthFieldState";
import { demoFitting } from "../../src/app/session/demoFitting";
import { fittingStore } from "../../src/app/session/store";
import { LengthField } from "../../src/ui/kit/field/LengthField";
import { StoreProvider } from "../../src/ui/kit/useStore";

/** Seen to fail: the Enter that ends the composing of a character handed in half a length. */
test("Enter while a character is being composed belongs to the input method", () => {
  const [onEnter, commit] = [vi.fn(), vi.fn()];
  const state: LengthFieldState = {
    text: "36",
    meaning: null,
    isForeign: false,
    isDraft: true,
    type: () => {},
    commit,
  };
  render(
    <StoreProvider store={fittingStore(demoFitting)}>
      <LengthField label="waist" state={state} onEnter={onEnter} />
    </StoreProvider>,
  );
  const field = screen.getByRole("textbox", { name: /waist/ });
  fireEvent.keyDown(field, { key: "Enter", isComposing: true });
  expect(commit).not.toHaveBeenCalled();
  expect(onEnter).not.toHaveBeenCalled();
  fireEvent.keyDown(field, { key: "Enter" });
  expect(commit).toHaveBeenCalledOnce();
  expect(onEnter).toHaveBeenCalledOnce();
});
