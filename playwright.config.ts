import { defineConfig } from "@playwright/test";
import { freePort } from "./tests/support/freePort";
import { browserLaunch } from "./tests/support/browser";

// The workers read this file again and must arrive at the same port, so it travels in the environment.
process.env.E2E_PORT ??= String(await freePort());
const address = `http://127.0.0.1:${process.env.E2E_PORT}`;

export default defineConfig({
  testDir: "e2e",
  testMatch: "**/*.spec.ts",
  outputDir: "test-results",
  workers: 2,
  fullyParallel: true,
  forbidOnly: true,
  retries: process.env.CI ? 1 : 0,
  // A slow or busy machine is no failure; a hang still is.
  timeout: 180_000,
  expect: { timeout: 30_000 },
  globalTimeout: 40 * 60_000,
  reporter: [["list"]],
  use: {
    baseURL: address,
    browserName: "chromium",
    locale: "en-US",
    // The tablet beside the form; where a story concerns other screens, it turns its page into each of them.
    viewport: { width: 1180, height: 820 },
    hasTouch: true,
    isMobile: true,
    // A trace of every test costs a tenth of the time; the retry of a failed one has it.
    trace: process.env.CI ? "on-first-retry" : "off",
    screenshot: "only-on-failure",
    // Keeping the pages for working offline has stories of its own, which allow it.
    serviceWorkers: "block",
    launchOptions: browserLaunch(),
  },
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${process.env.E2E_PORT} --strictPort`,
    url: address,
    reuseExistingServer: false,
  },
});
