import react from "@vitejs/plugin-react";
import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";
import { offlineFiles } from "./src/app/offline/build/offlineFiles.ts";
import { hostHeaders } from "./src/command/hostHeaders.ts";
import { languagePlugins } from "./src/command/languageBuild.ts";
import { pageTestFolders, plainTestFolders } from "./tests/support/testFolders.ts";

/**
 * The page allows no inline script or style. The development server needs both for its live reloading, so it alone
 * drops the policy; the built page keeps it.
 */
const policyOffWhileDeveloping: Plugin = {
  name: "policy-off-while-developing",
  apply: "serve",
  transformIndexHtml: (html) => html.replace(/<meta\s+http-equiv="Content-Security-Policy"[^>]*>/, ""),
};

export default defineConfig(({ mode }) => ({
  // Relative addresses, so that the built folder works at any place of any static host.
  base: "./",
  plugins: [react(), policyOffWhileDeveloping, ...languagePlugins(mode), offlineFiles(), hostHeaders()],
  build: {
    // Nothing is inlined as data: the policy lets fonts and styles come from the page's own origin only.
    assetsInlineLimit: 0,
  },
  preview: {
    host: "127.0.0.1",
    // A port of our own: what a browser stores belongs to an address with its port.
    port: 4471,
  },
  test: {
    maxWorkers: 2,
    // A slow or busy machine is no failure; a hang still is.
    testTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: "core",
          environment: "node",
          // The files of one worker share the modules of the core, which keep no state: reading them anew took a third of the time.
          isolate: false,
          include: [
            "tests/architecture.test.ts",
            ...plainTestFolders.map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`),
          ],
        },
      },
      {
        extends: true,
        test: {
          name: "ui",
          environment: "happy-dom",
          // As above; stubs, timers and the address are taken back in the setup file.
          isolate: false,
          include: pageTestFolders.map((folder) => `tests/${folder}/**/*.test.{ts,tsx}`),
          setupFiles: ["tests/setup.ts"],
        },
      },
    ],
  },
}));
