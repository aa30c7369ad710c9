import "@testing-library/jest-dom/vitest";
import { cleanup, configure } from "@testing-library/react";
import { afterAll, afterEach, vi } from "vitest";

// A slow or busy machine is no failure.
configure({ asyncUtilTimeout: 20_000 });

// No test asks a network for anything; the class view would ask its server for a remote.
globalThis.fetch = () => Promise.reject(new Error("There is no network in these tests."));

afterEach(() => {
  cleanup();
});

// The files of one worker share their modules and their page: the next one finds them as this one did.
afterAll(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
  window.location.hash = "";
});
