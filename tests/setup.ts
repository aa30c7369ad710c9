import "@testing-library/jest-dom/vitest";
import { cleanup, configure } from "@testing-library/react";
import { afterEach } from "vitest";

// A slow or busy machine is no failure.
configure({ asyncUtilTimeout: 20_000 });

afterEach(() => {
  cleanup();
});
