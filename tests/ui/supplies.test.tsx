import { fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { describe, expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import type { Fitting } from "../../src/document/fitting";
import { StoreProvider } from "../../src/ui/kit/useStore";
import { SuppliesPart } from "../../src/ui/pages/finishing/SuppliesPart";
import { SuppliesSheet } from "../../src/ui/pages/print/SuppliesSheet";

function planOf(fitting: Fitting) {
  const { planning } = derivation()(fitting);
  if (planning.kind !== "planned") throw new Error("no plan");
  return planning.plan;
}

function shown(fitting: Fitting) {
  const store = fittingStore(fitting);
  const plan = planOf(fitting);
  const { container, unmount } = render(
    <StoreProvider store={store}>
      <SuppliesPart plan={plan} onCover={null} />
      <SuppliesSheet plan={plan} />
    </StoreProvider>,
  );
  return { store, container, unmount, text: () => (container.textContent ?? "").replaceAll("\u00a0", " ") };
}

const price = (name: RegExp) => screen.getByRole("textbox", { name });

describe("supplies on the finishing page and on paper", () => {
  /** Broken on purpose: a packet chosen and the roll still laid out; a shape left out of the picture. Seen to fail. */
  test("are laid out on what is chosen, every layer in the picture, on screen and on paper alike", () => {
    const { store, container, text, unmount } = shown(demoFitting);
    const layers = planOf(demoFitting).pieces.reduce((sum, { cut }) => sum + cut.length, 0);
    const shapes = () => container.querySelector(".layout-pictures")?.querySelectorAll(".mark-battingOn").length;
    // Three turns of the trial lie among them.
    expect(shapes()).toBe(layers + 3);
    expect(text().match(/1 1\/8 yd of a roll 90 in wide/g)).toHaveLength(2);
    fireEvent.change(screen.getByRole("combobox", { name: "Bought as" }), { target: { value: "packet-45x60-in" } });
    expect(store.getState().fitting.supplies?.building?.good).toBe("packet-45x60-in");
    expect(text().match(/2 packets of 45 × 60 in/g)).toHaveLength(2);
    unmount();
  });

  /** Broken on purpose: text that is no price thrown away; the price of a packet kept for a roll. Seen to fail. */
  test("a price is read when the field is left; what is no price stays with a sentence, and a sum says what it lacks", async () => {
    const { store, text, unmount } = shown(demoFitting);
    const batting = price(/^Price of bonded batting/);
    fireEvent.change(batting, { target: { value: "eight" } });
    fireEvent.blur(batting);
    expect(batting).toHaveProperty("value", "eight");
    expect(text()).toContain("“eight” cannot be read as a price. Type a number, such as 12.50.");
    expect(store.getState().fitting.supplies).toBeUndefined();
    fireEvent.change(batting, { target: { value: "8,00" } });
    fireEvent.blur(batting);
    expect(store.getState().fitting.supplies?.building?.price).toEqual({ amount: 8, per: "yard" });
    await waitFor(() => expect(text()).toContain("Together 9.00, without what has no price yet."));
    fireEvent.change(screen.getByRole("combobox", { name: "Bought as" }), { target: { value: "packet-81x96-in" } });
    expect(price(/^Price of bonded batting, for one packet/)).toHaveProperty("value", "");
    expect(text()).not.toContain("Together");
    unmount();
  });

  test("the cloth of the cover follows what is chosen, with an opening for woven fabric alone", async () => {
    const { text, container, unmount } = shown(demoFitting);
    await screen.findByText(/A snug stretch under-cover/, { selector: "section.stitched li" });
    const part = container.querySelector("section.stitched") as HTMLElement;
    expect(text()).toMatch(/Stretch knit: [\d /]+yd, at least 60 in wide\. The 8 panels lie side by side in one row/);
    expect(text()).not.toContain("zipper");
    fireEvent.click(within(part).getByRole("radio", { name: "woven fabric" }));
    fireEvent.click(within(part).getByRole("radio", { name: /^45.in wide$/ }));
    await waitFor(() => expect(part.textContent).toContain("A zipper of"));
    expect(text()).toMatch(/Woven fabric: [\d /]+yd, at least 45 in wide\. The 8 panels lie side by side in 2 rows/);
    unmount();
  });
});
