import { afterEach, describe, expect, it } from "vitest";
import { failedLast, noteLeft, noteStart } from "../../src/ui/kit/rescue/FailedPage";

afterEach(() => localStorage.clear());

describe("the note of a start that has not ended well", () => {
  it("is gone when the page is left while its fitting is still on its way to the table", () => {
    noteStart("one");
    expect(failedLast("one")).toBe(true);
    noteLeft();
    expect(failedLast("one")).toBe(false);
  });

  it("stays where another page is opening another fitting", () => {
    noteStart("one");
    localStorage.setItem("padwright start not ended well", "two");
    noteLeft();
    expect(failedLast("two")).toBe(true);
  });
});
