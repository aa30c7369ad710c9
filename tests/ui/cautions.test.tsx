import { fireEvent, render, screen } from "@testing-library/react";
import { describe, expect, test } from "vitest";
import { Cautions } from "../../src/ui/kit/Cautions";
import { type CautionPlace, cautionPlaces, cautionsAt, shortCautions } from "../../src/text/cautions";

const places = Object.keys(cautionPlaces) as readonly CautionPlace[];

describe("cautions", () => {
  test("stand in their short form in sight, and at a tap each says what it means", () => {
    const { container } = render(<Cautions at="measuringBody" />);
    const summary = screen.getByText(shortCautions("measuringBody"));
    expect(summary.tagName).toBe("SUMMARY");
    expect(container.querySelector("details")?.open).toBe(false);
    fireEvent.click(summary);
    expect(container.querySelector("details")?.open).toBe(true);
    for (const { long } of cautionsAt("measuringBody")) expect(container.textContent).toContain(long);
  });

  test("every caution is said somewhere, and none at more than two places, but for pins and needles, which are counted wherever they are used", () => {
    const said = places.flatMap((place) => [...cautionPlaces[place]]);
    for (const name of new Set(said)) {
      const most = name.startsWith("pins") ? 4 : name === "needles" ? 3 : 2;
      expect(said.filter((one) => one === name).length, name).toBeLessThanOrEqual(most);
    }
  });

  test("a short form is read at a glance", () => {
    for (const place of places) {
      for (const { short, long } of cautionsAt(place)) {
        expect(short.length, short).toBeLessThanOrEqual(72);
        expect(long.length, long).toBeGreaterThan(short.length);
      }
    }
  });

  test("where chemicals, blades or heat are named, local rules and the label go first", () => {
    const hot = places
      .flatMap((place) => cautionsAt(place))
      .filter(({ long }) => /\b(blade|Batting sheds|Press)\b/.test(long));
    expect(hot.length).toBeGreaterThan(3);
    for (const { long } of hot) expect(long).toContain("Follow local rules and the maker’s label.");
  });
});
