import { render } from "@testing-library/react";
import { expect, test } from "vitest";
import { mm } from "../../src/core/units";
import { LengthFigure } from "../../src/ui/kit/LengthFigure";

const shown = (length: number, step: "1/8 in" | "1/16 in" | "0.5 cm" | "1 mm") => {
  const { container, unmount } = render(<LengthFigure length={mm(length)} step={step} />);
  const parts = {
    heard: container.querySelector(".unseen")?.textContent,
    seen: [...container.querySelectorAll("[aria-hidden]")].map(({ textContent }) => textContent),
  };
  unmount();
  return parts;
};

test("whole number, fraction and unit are set apart, and heard as one", () => {
  expect(shown(34.75 * 25.4, "1/8 in")).toEqual({ heard: "34 3/4 in", seen: ["34", "34", "in"] });
  expect(shown(975, "0.5 cm")).toEqual({ heard: "97.5 cm", seen: ["97.5", "cm"] });
  expect(shown(38 * 25.4, "1/8 in")).toEqual({ heard: "38 in", seen: ["38", "in"] });
});

test("a fraction alone is not taken for a whole number", () => {
  const { container } = render(<LengthFigure length={mm((13 / 16) * 25.4)} step="1/16 in" />);
  expect(container.querySelector(".length-over")?.textContent).toBe("13");
  expect(container.querySelector(".length-under")?.textContent).toBe("16");
});
