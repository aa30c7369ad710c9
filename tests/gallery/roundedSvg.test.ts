import { describe, expect, test } from "vitest";
import { roundedSvg } from "./roundedSvg";

const line = (d: string, words = "38.5 in") =>
  `<svg viewBox="0 0 10 10"><path d="${d}"/><text x="1.2">${words}</text></svg>`;

describe("comparing pictures by rounded numbers", () => {
  test("a difference in the last digits is no difference", () => {
    expect(roundedSvg(line("M1.1 2.2L3.4 -0.1"))).toBe(roundedSvg(line("M1.2 2.1L3.3 0.1")));
  });

  test("a point moved by a millimetre is a difference", () => {
    expect(roundedSvg(line("M1.1 2.2L3.4 5"))).not.toBe(roundedSvg(line("M1.1 2.2L4.4 5")));
  });

  test("a lost point and a changed word are differences", () => {
    expect(roundedSvg(line("M1 2L3 4L5 6"))).not.toBe(roundedSvg(line("M1 2L5 6")));
    expect(roundedSvg(line("M1 2", "38.5 in"))).not.toBe(roundedSvg(line("M1 2", "38.4 in")));
  });

  test("numbers are rounded only where they are places and sizes", () => {
    expect(roundedSvg('<path class="mark-1.5" d="M1.5 -1.6"/>')).toBe('<path class="mark-1.5" d="M2 -2"/>');
  });
});
