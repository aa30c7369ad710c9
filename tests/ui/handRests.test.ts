import { fireEvent } from "@testing-library/react";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { whenHandRests } from "../../src/ui/kit/handRests";

/** Seen to fail: on work done between two letters, and on Enter that waited as well. */
beforeEach(() => {
  vi.useFakeTimers();
});
afterEach(() => {
  // The hand rests again, for whatever is tested next.
  key("Enter");
  vi.useRealTimers();
});

const key = (name: string) => fireEvent.keyDown(document.body, { key: name });

test("where nobody types it is done at once", () => {
  vi.advanceTimersByTime(1_000);
  const work = vi.fn();
  whenHandRests(work);
  expect(work).toHaveBeenCalledTimes(1);
});

test("between letters it waits for the rest of them, once and for all", () => {
  vi.advanceTimersByTime(1_000);
  whenHandRests(() => {});
  const work = vi.fn();
  key("3");
  whenHandRests(work);
  for (let i = 0; i < 5; i += 1) {
    vi.advanceTimersByTime(130);
    key("4");
  }
  expect(work).not.toHaveBeenCalled();
  vi.advanceTimersByTime(250);
  expect(work).toHaveBeenCalledTimes(1);
  vi.advanceTimersByTime(1_000);
  key("Enter");
  expect(work).toHaveBeenCalledTimes(1);
});

test("Enter lets it through, and it can be called off", () => {
  whenHandRests(() => {});
  const [work, other] = [vi.fn(), vi.fn()];
  key("3");
  const callOff = whenHandRests(other);
  whenHandRests(work);
  callOff();
  key("Enter");
  expect([work.mock.calls.length, other.mock.calls.length]).toEqual([1, 0]);
});
