import { defineConfig } from "@playwright/test";
import { freePort } from "./tests/support/freePort";
import { systemChromium } from "./tests/support/browser";

// The workers read this file again and must arrive at the same port, so it travels in the environment.
process.env.E2E_PORT ??= String(await freePort());
const address = `http://127.0.0.1:${process.env.E2E_PORT}`;

const executablePath = systemChromium();
const isRoot = process.getuid?.() === 0;
const touch = { hasTouch: true, isMobile: true };

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
    // A trace of every test costs a tenth of the time; the retry of a failed one has it.
    trace: process.env.CI ? "on-first-retry" : "off",
    screenshot: "only-on-failure",
    // Keeping the pages for working offline has stories of its own, which allow it.
    serviceWorkers: "block",
    launchOptions: {
      ...(executablePath === undefined ? {} : { executablePath }),
      args: [
        ...(isRoot ? ["--no-sandbox"] : []),
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
      ],
    },
  },
  // Every test runs on the tablet beside the form; a tag in its title or tags sends it to other rooms as well.
  projects: [
    { name: "tablet", use: { viewport: { width: 1180, height: 820 }, ...touch } },
    { name: "portrait", grep: /@portrait/, use: { viewport: { width: 820, height: 1180 }, ...touch } },
    { name: "projector", grep: /@projector/, use: { viewport: { width: 1920, height: 1080 } } },
    { name: "phone", grep: /@phone/, use: { viewport: { width: 390, height: 844 }, ...touch } },
  ],
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${process.env.E2E_PORT} --strictPort`,
    url: address,
    reuseExistingServer: false,
  },
});
