import { installedProgram } from "./smokeInstall";
import { smokeRun } from "./smokeRun";
import { ownScreen } from "./smokeScreen";
import { webDriver } from "./smokeWebDriver";

/**
 * `npm run smoke:webkit`: the smoke story in WebKit's build for Linux, driven over plain WebDriver. It is the engine of
 * Safari, not Safari: nothing here speaks for an iPad's keyboard, its storage or its speed.
 */
await smokeRun(webkit).catch((problem: unknown) => {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 1;
});

async function webkit() {
  const packages = ["webkit2gtk-driver", "xvfb"];
  const program = installedProgram(["WebKitWebDriver"], packages);
  const screen = await ownScreen(installedProgram(["Xvfb"], packages));
  const env = {
    ...process.env,
    DISPLAY: screen.display,
    LANG: "en_US.UTF-8",
    LANGUAGE: "en_US",
    // WebKit keeps its pages in a sandbox that root cannot make; as anybody else it stays on.
    ...(process.getuid?.() === 0 ? { WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: "1" } : {}),
  };
  const browser = await webDriver(program, env).catch((problem: unknown) => {
    screen.stop();
    throw problem;
  });
  return {
    ...browser,
    close: async () => {
      await browser.close();
      screen.stop();
    },
  };
}
