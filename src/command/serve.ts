import { spawn } from "node:child_process";
import { build } from "vite";
import { startWish, startWords } from "./startWords";
import { toolServer } from "./toolServer";

/**
 * `npm start`: builds the tool, serves it to this machine alone and opens it in the person's own browser with the
 * demo fitting loaded. The address is printed in any case, so that a machine without a browser is no dead end. With
 * `--share` other devices in the same network may open it too, by an address or by the square code of it.
 */
const wish = startWish(process.argv.slice(2));
if (wish.kind === "refused") {
  console.error(wish.sentence);
  process.exit(2);
}
if (wish.kind === "help") {
  console.log(startWords.help);
  process.exit(0);
}

await build({ logLevel: "warn" });
const server = await toolServer({ isShared: wish.isShared });
const address = new URL("#demo", server.local).href;
console.log(`\n${startWords.demo(address)}`);
console.log(wish.isShared ? startWords.shared(server.network, process.stdout.isTTY) : startWords.alone);
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
