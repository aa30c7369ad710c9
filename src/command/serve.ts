import { spawn } from "node:child_process";
import { build, preview } from "vite";

/**
 * `npm start`: builds the tool, serves it to this machine alone and opens it in the person's own browser with the
 * demo fitting loaded. The address is printed in any case, so that a machine without a browser is no dead end.
 */
await build({ logLevel: "warn" });
const server = await preview();
const local = server.resolvedUrls?.local[0];
if (local === undefined) throw new Error("The server gave no address.");

const address = new URL("#demo", local).href;
console.log(`\nPadwright with its demo fitting:  ${address}\nOnly this machine can reach it. Stop it with Ctrl-C.\n`);
openInBrowser(address);

function openInBrowser(url: string): void {
  const opener = browserOpener();
  if (opener === undefined) {
    console.log("No browser to open was found here: please open the address yourself.");
    return;
  }
  const [command, ...options] = opener;
  const child = spawn(command, [...options, url], { detached: true, stdio: "ignore" });
  child.once("error", () => console.log("The browser could not be started: please open the address yourself."));
  child.once("exit", (code) => {
    if (code !== 0) console.log("The browser did not open: please open the address yourself.");
  });
  child.unref();
}

/** What opens an address on this system, or undefined where there is no screen to open it on. */
function browserOpener(): readonly [string, ...string[]] | undefined {
  if (process.platform === "darwin") return ["open"];
  if (process.platform === "win32") return ["cmd", "/c", "start", ""];
  const hasScreen = ["DISPLAY", "WAYLAND_DISPLAY", "BROWSER"].some((name) => (process.env[name] ?? "") !== "");
  return hasScreen ? ["xdg-open"] : undefined;
}
