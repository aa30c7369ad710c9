import { expect, test } from "vitest";
import demoFile from "../../shared/demo-fitting.json";
import { demoFitting } from "../../src/app/session/demoFitting";
import { readFitting } from "../../src/document/readFitting";

/** Seen to fail with a key in the file that no fitting has, and with another default. */
test("the demo in memory is what reading its file gives", () => {
  expect(readFitting(demoFile)).toEqual({ ok: true, value: demoFitting });
});
