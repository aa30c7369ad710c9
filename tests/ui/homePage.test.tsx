import { render, screen } from "@testing-library/react";
import { expect, test } from "vitest";
import { fittingStore } from "../../src/app/session/store";
import { newFitting } from "../../src/app/session/newFitting";
import { HomePage } from "../../src/ui/pages/home/HomePage";
import { StoreProvider } from "../../src/ui/kit/useStore";

test("Home has its two ways at once, and then three figures with their words", async () => {
  const { container } = render(
    <StoreProvider store={fittingStore(newFitting("in"))}>
      <HomePage />
    </StoreProvider>,
  );
  expect(screen.getByRole("button", { name: "Start with bust, waist and hip" })).toBeTruthy();
  expect(screen.getByRole("button", { name: /sample person/ })).toBeTruthy();
  expect(await screen.findByText("Covered: the tape reads as on the person", {}, { timeout: 30_000 })).toBeTruthy();
  expect(container.querySelectorAll(".home-stages svg").length).toBe(3);
  for (const path of container.querySelectorAll(".home-stages path"))
    expect(path.getAttribute("d")).not.toMatch(/NaN|Infinity/);
});
