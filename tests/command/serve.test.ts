import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { stripVTControlCharacters } from "node:util";
import jsQR from "jsqr";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { headerRules, headersFor } from "../../src/command/hostHeaders";
import { squareCode, startWish, startWords } from "../../src/command/startWords";
import { type ToolServer, toolServer } from "../../src/command/toolServer";
import { freePort } from "../support/freePort";

const root = resolve(import.meta.dirname, "../..");
let folder = "";

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "padwright-served-"));
  mkdirSync(join(folder, "assets"));
  writeFileSync(join(folder, "index.html"), "<!doctype html><title>built</title>");
  writeFileSync(join(folder, "sw.js"), "");
  writeFileSync(join(folder, "assets/a-1.js"), "");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

async function served(isShared: boolean, look: (server: ToolServer) => Promise<void>): Promise<void> {
  const server = await toolServer({ isShared, folder, port: await freePort() });
  try {
    await look(server);
  } finally {
    await server.close();
  }
}

describe("the server", () => {
  test("is bound to this machine alone, and sends the headers of public/_headers", async () => {
    await served(false, async ({ local, network, boundTo }) => {
      expect([boundTo, network]).toEqual(["127.0.0.1", []]);
      const { headers } = await fetch(local);
      expect(headers.get("content-security-policy")).toBe("frame-ancestors 'none'");
      expect(headers.get("x-content-type-options")).toBe("nosniff");
      expect(headers.get("permissions-policy")).toContain("camera=()");
      expect(headers.get("cross-origin-opener-policy")).toBe("same-origin");
      expect(headers.get("strict-transport-security")).toBeNull();
      expect(headers.get("cache-control")).toBe("no-cache");
      expect((await fetch(`${local}sw.js?2`)).headers.get("cache-control")).toBe("no-cache");
      expect((await fetch(`${local}assets/a-1.js`)).headers.get("cache-control")).toContain("immutable");
    });
  });

  test("is reached from the machine's networks when it is shared, with the same headers", async () => {
    await served(true, async ({ local, network, boundTo }) => {
      expect(boundTo).toBe("0.0.0.0");
      // Seen to fail with the name "localhost", where a browser keeps other fittings than at the number.
      expect(local).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
      for (const address of network) {
        const answer = await fetch(address);
        expect(await answer.text()).toContain("built");
        expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
      }
    });
  });
});

describe("the headers a host should send", () => {
  const rules = headerRules(readFileSync(join(root, "public/_headers"), "utf8"));

  test("ask for strict transport, which a server without encryption leaves out", () => {
    const all = rules.flatMap(({ headers }) => headers).map(([name]) => name);
    expect(all).toContain("Strict-Transport-Security");
    expect(headersFor(rules, "/").map(([name]) => name)).not.toContain("Strict-Transport-Security");
  });

  test("a rule fits its own path, or all that begin with it; a line that is no header is refused", () => {
    const two = headerRules("# why\n/*\n  A: one\n\n/x\n  # and\n  B: two: three\n");
    expect(headersFor(two, "/x?y")).toEqual([
      ["A", "one"],
      ["B", "two: three"],
    ]);
    expect(headersFor(two, "/xy")).toEqual([["A", "one"]]);
    expect(() => headerRules("/*\n  nosniff\n")).toThrow(/is not a header/);
  });
});

describe("npm start", () => {
  test("shares only when asked, and refuses what it does not know", () => {
    expect(startWish([])).toEqual({ kind: "serve", isShared: false });
    expect(startWish(["--share"])).toEqual({ kind: "serve", isShared: true });
    expect(startWish(["--share", "-h"])).toEqual({ kind: "help" });
    expect(startWish(["--shred"])).toMatchObject({ kind: "refused", sentence: expect.stringContaining("--shred") });
  });

  test("says where other devices open it, what that means, and that there may be no network", () => {
    const said = startWords.shared(["http://192.0.2.7:4471/", "http://198.51.100.9:4471/"], false);
    for (const part of ["http://192.0.2.7:4471/", "http://198.51.100.9:4471/", "not encrypted", "its own fittings"])
      expect(said).toContain(part);
    expect(said).toContain(squareCode("http://192.0.2.7:4471/", false));
    expect(startWords.shared([], false)).toContain("in no network");
  });

  test.each([true, false])("the square code is the address, as a terminal shows it (colors: %s)", (hasColors) => {
    const address = "http://192.168.178.23:4471/";
    const lines = stripVTControlCharacters(squareCode(address, hasColors)).split("\n");
    expect(scanned(lines)).toBe(address);
  });
});

/** What a camera reads of half blocks, light on dark, each half eight points wide and high. */
function scanned(lines: readonly string[]): string | undefined {
  const scale = 8;
  const width = Math.max(...lines.map((line) => line.length));
  const [side, high] = [width * scale, lines.length * 2 * scale];
  const points = new Uint8ClampedArray(side * high * 4);
  const isLight = (x: number, y: number): boolean => {
    const sign = lines[y >> 1]?.[x] ?? " ";
    return sign === "█" || sign === (y % 2 === 0 ? "▀" : "▄");
  };
  for (let y = 0; y < high; y += 1)
    for (let x = 0; x < side; x += 1) {
      const value = isLight(Math.floor(x / scale), Math.floor(y / scale)) ? 255 : 0;
      points.set([value, value, value, 255], (y * side + x) * 4);
    }
  return jsQR(points, side, high)?.data;
}
