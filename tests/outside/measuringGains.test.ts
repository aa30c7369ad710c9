import { expect, test, vi } from "vitest";
import committed from "../../shared/measuring-gains.json";
import { gainsFile } from "../tools/trueGains";

/** Hundreds of plans, and other work may share the machine. */
vi.setConfig({ testTimeout: 300_000 });

/**
 * What screens say of each question is what the study gives today, in the order it was written. Broken on purpose: a
 * figure of the file raised by a millimeter. Seen to fail.
 */
test("the millimeters that each question gains are those of the plans of today", () => {
  expect(committed).toEqual(gainsFile(null));
});

test("most is gained first, and every question gains something", () => {
  expect(committed.order.length).toBeGreaterThan(3);
  const leaves = [committed.startMm, ...committed.order.map(({ leftMm }) => leftMm)];
  for (const [i, { gainMm, leftMm }] of committed.order.entries()) {
    expect(gainMm).toBeGreaterThan(0);
    expect((leaves[i] ?? 0) - leftMm).toBe(gainMm);
  }
});
