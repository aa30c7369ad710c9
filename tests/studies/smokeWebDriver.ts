import { spawn } from "node:child_process";
import { freePort } from "../support/freePort";
import type { SmokeBrowser } from "./smokeBrowser";

/**
 * A browser behind a WebDriver program, spoken to with nothing but fetch: of the standard (W3C WebDriver, the endpoints
 * are its section 6.6) only the dozen commands that the smoke story needs.
 */
export async function webDriver(program: string, env: NodeJS.ProcessEnv): Promise<SmokeBrowser> {
  const port = await freePort();
  const child = spawn(program, [`--port=${port}`], { env, stdio: "ignore" });
  const root = `http://127.0.0.1:${port}`;
  const session = await newSession(root).catch((problem: unknown) => {
    child.kill();
    throw problem;
  });
  const to = <Value>(command: string, body?: object) => call<Value>(`${root}/session/${session.id}/${command}`, body);
  const element = async (path: string): Promise<string> => {
    const found = await to<{ readonly [key: string]: string }>("element", { using: "xpath", value: path });
    return `element/${found[elementKey]}`;
  };
  await to("window/rect", { x: 0, y: 0, width: 1180, height: 820 });
  return {
    name: session.name,
    open: (address) => to("url", { url: address }),
    reload: () => to("refresh", {}),
    ask: (expression) => to("execute/sync", { script: `return (${expression});`, args: [] }),
    press: async (path) => to(`${await element(path)}/click`, {}),
    type: async (path, text) => to(`${await element(path)}/value`, { text }),
    pressEnter: async (path) => to(`${await element(path)}/value`, { text: enterKey }),
    picture: async () => Buffer.from(await to<string>("screenshot"), "base64"),
    close: async () => {
      await call(`${root}/session/${session.id}`, undefined, "DELETE").catch(() => undefined);
      child.kill();
    },
  };
}

/** How the standard names an element in an answer, and the Enter key among letters. */
const elementKey = "element-6066-11e4-a52e-4f735466cecf";
const enterKey = "\uE007";

async function newSession(root: string): Promise<{ readonly id: string; readonly name: string }> {
  const latest = performance.now() + 10_000;
  for (;;) {
    const ready = await call<{ readonly ready: boolean }>(`${root}/status`).catch(() => ({ ready: false }));
    if (ready.ready) break;
    if (performance.now() > latest) throw new Error("The WebDriver program does not answer.");
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  const { sessionId, capabilities } = await call<{
    readonly sessionId: string;
    readonly capabilities: { readonly browserName: string; readonly browserVersion: string };
  }>(`${root}/session`, { capabilities: { alwaysMatch: {} } });
  return { id: sessionId, name: `WebKit (${capabilities.browserName} ${capabilities.browserVersion})` };
}

async function call<Value>(address: string, body?: object, method = body ? "POST" : "GET"): Promise<Value> {
  const response = await fetch(address, { method, ...(body ? { body: JSON.stringify(body) } : {}) });
  const { value } = (await response.json()) as { readonly value: Value & { readonly message?: string } };
  if (!response.ok) throw new Error(`${new URL(address).pathname}: ${value.message ?? response.status}`);
  return value;
}
