import { expect, test } from "vitest";
import { fittedCover } from "../../../src/core/cover/fittedCover";
import { coverCases, knit } from "./covers";

/** A person waits for it while trying a stretch; a slow or busy machine is no failure, so the best of several counts. */
test("a cover is worked out in less than 100 ms", () => {
  const [one] = coverCases(1);
  if (one === undefined) throw new Error("no cover");
  const times = Array.from({ length: 8 }, () => {
    const start = process.cpuUsage();
    fittedCover(one.ground, knit);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000;
  });
  expect(Math.min(...times)).toBeLessThan(100);
});
