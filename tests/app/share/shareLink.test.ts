import { crc32, inflateRawSync } from "node:zlib";
import fc from "fast-check";
import jsQR from "jsqr";
import { describe, expect, it } from "vitest";
import { takeLink } from "../../../src/app/share/linkAddress";
import { fromBase64url, toBase64url } from "../../../src/app/share/base64url";
import { packed, unpacked } from "../../../src/app/share/packedText";
import { longestCode, qrCode } from "../../../src/app/share/qrCode";
import { longestLink, readLink, shared, shareLink } from "../../../src/app/share/shareLink";
import { checkSum } from "../../../src/app/storage/checkSum";
import { fittingText } from "../../../src/app/storage/fittingText";
import type { Fitting } from "../../../src/document/fitting";
import { fittingFrom, sampleFitting, sampleTitled } from "../storage/sampleFittings";

const page = "https://sewing.example/tool/?from=class#old";
const nothing = { names: false, work: false };

const linkOf = async (fitting: Fitting, wishes = nothing): Promise<string> => {
  const outcome = await shareLink(fitting, wishes, page);
  if (outcome.kind !== "link") throw new Error(outcome.kind);
  return outcome.link;
};
const hashOf = (link: string): string => link.slice(link.indexOf("#"));

describe("a link with a fitting in it", () => {
  it("gives the fitting back, without names unless they are wanted", async () => {
    const link = await linkOf(sampleFitting);
    expect(link.startsWith("https://sewing.example/tool/#fitting=1z")).toBe(true);
    const read = await readLink(hashOf(link));
    expect(read).toMatchObject({ ok: true, value: { title: "", notes: "", body: sampleFitting.body } });
    const named = await readLink(hashOf(await linkOf(sampleFitting, { names: true, work: false })));
    expect(named).toMatchObject({ value: { title: "Odile, spring jacket" } });
  });

  it("carries nothing that names anybody when names are not wanted, not even packed", async () => {
    const link = await linkOf({ ...sampleTitled("Odile", "odile-0001"), createdAt: "2026-01-01", notes: "her mother" });
    const data = Buffer.from(hashOf(link).slice("#fitting=1z".length + 8), "base64url");
    const text = inflateRawSync(data).toString("utf8");
    expect(text).toContain("bustGirth");
    expect(text).not.toMatch(/Odile|odile|mother|2026/);
  });

  it("is short enough for a messenger and a code in the class view", async () => {
    expect((await linkOf(sampleFitting)).length).toBeLessThan(600);
  });

  it("is not made when it would be too long", async () => {
    const noise = Array.from({ length: 9_000 }, (_, i) =>
      String.fromCharCode(33 + ((i * 7_919 + ((i * i) % 83)) % 90)),
    ).join("");
    const outcome = await shareLink({ ...sampleFitting, notes: noise }, { names: true, work: false }, page);
    expect(outcome).toMatchObject({ kind: "tooLong", most: longestLink });
  });

  it("is read once, and taken out of the address", () => {
    const replaced: unknown[] = [];
    const history = { replaceState: (...args: unknown[]) => replaced.push(args) } as unknown as History;
    const location = { hash: "#fitting=1pabc", pathname: "/tool/", search: "?a=1" } as Location;
    expect(takeLink({ location, history })).toBe("#fitting=1pabc");
    expect(replaced).toEqual([[null, "", "/tool/?a=1"]]);
    expect(takeLink({ location: { ...location, hash: "#pieces" }, history })).toBeNull();
    expect(replaced).toHaveLength(1);
  });

  it("is read although a messenger put a sign behind it", async () => {
    expect((await readLink(`${hashOf(await linkOf(sampleFitting))}).`)).ok).toBe(true);
  });

  it("is read although a messenger wrote its equals sign as %3D", async () => {
    for (const sign of ["%3D", "%3d"]) {
      const hash = hashOf(await linkOf(sampleFitting)).replace("=", sign);
      expect((await readLink(hash)).ok).toBe(true);
      const history = { replaceState: () => {} } as unknown as History;
      const taken = takeLink({ location: { hash, pathname: "/", search: "" } as Location, history });
      expect(taken).toBe(hash.replace(sign, "="));
    }
  });

  it("of a newer release is told as one, whatever its form, its length and the version inside", async () => {
    const text = '{"version":9}';
    const inside = `#fitting=1p${checkSum(text)}${toBase64url(new TextEncoder().encode(text))}`;
    for (const hash of ["#fitting=2", "#fitting=2~other~form", `#fitting=3z${"A".repeat(longestLink)}`, inside])
      expect(await readLink(hash)).toMatchObject({ problem: { code: "newerLink" } });
  });

  it("is refused with a reason when it is newer, no link of ours, or no fitting", async () => {
    const hash = hashOf(await linkOf(sampleFitting));
    expect(await readLink("#pieces")).toMatchObject({ problem: { code: "notALink" } });
    expect(await readLink(hash.replace("=1z", "=2z"))).toMatchObject({ problem: { code: "newerLink" } });
    expect(await readLink(hash.replace("=1z", "=1q"))).toMatchObject({ problem: { code: "damaged" } });
    expect(await readLink(`#fitting=1z${"A".repeat(longestLink)}`)).toMatchObject({ problem: { code: "tooLong" } });
    const text = '{"version":1}';
    const plain = `#fitting=1p${checkSum(text)}${toBase64url(new TextEncoder().encode(text))}`;
    expect(await readLink(plain)).toMatchObject({ problem: { code: "badFitting" } });
  });

  it("does not swell without end", { timeout: 30_000 }, async () => {
    const bomb = await packed(new Uint8Array(50_000_000));
    if (bomb === null) throw new Error("nothing packed");
    expect(await unpacked(new Uint8Array(bomb), 400_000)).toBeNull();
    const start = performance.now();
    expect(await readLink(`#fitting=1z00000000${toBase64url(bomb).slice(0, 7_900)}`)).toMatchObject({ ok: false });
    expect(performance.now() - start).toBeLessThan(10_000);
  });

  it("is refused whichever sign of it was changed or wherever it was cut", { timeout: 60_000 }, async () => {
    const hash = hashOf(await linkOf(sampleFitting));
    const whole = fittingText(shared(sampleFitting, nothing));
    const isRefusedOrWhole = async (text: string): Promise<boolean> => {
      const read = await readLink(text);
      return !read.ok || fittingText(read.value) === whole;
    };
    for (let at = 0; at < hash.length; at += 1) {
      expect((await readLink(hash.slice(0, at))).ok).toBe(false);
      for (const other of ["A", "_", "7", "\u0000"]) {
        expect(await isRefusedOrWhole(hash.slice(0, at) + other + hash.slice(at + 1))).toBe(true);
      }
    }
  });

  it("never crashes or hangs, whatever it says", { timeout: 60_000 }, async () => {
    await fc.assert(fc.asyncProperty(fc.string(), async (text) => !(await readLink(`#fitting=${text}`)).ok));
    const bytes = fc.uint8Array({ maxLength: 200 }).map((data) => toBase64url(data));
    await fc.assert(fc.asyncProperty(bytes, async (data) => !(await readLink(`#fitting=1z00000000${data}`)).ok));
  });

  it("comes back the same for any work and any words", { timeout: 60_000 }, async () => {
    const words = fc.string({ unit: "grapheme", maxLength: 60 });
    await fc.assert(
      fc.asyncProperty(words, words, fc.boolean(), async (title, notes, names) => {
        const fitting = { ...fittingFrom({ ...JSON.parse(fittingText(sampleFitting)), title, notes }) };
        const wishes = { names, work: true };
        const read = await readLink(hashOf(await linkOf(fitting, wishes)));
        return read.ok && fittingText(read.value) === fittingText(shared(fitting, wishes));
      }),
    );
  });
});

describe("against other implementations", () => {
  it("packs what zlib unpacks, and unpacks what it packed", async () => {
    const bytes = new TextEncoder().encode("calico ".repeat(500));
    const small = await packed(bytes);
    if (small === null) throw new Error("nothing packed");
    expect(inflateRawSync(small).equals(bytes)).toBe(true);
    expect(await unpacked(new Uint8Array(small), 10_000)).toEqual(bytes);
  });

  it("writes base64url as Node does", () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        const text = toBase64url(bytes);
        return (
          text === Buffer.from(bytes).toString("base64url") && Buffer.from(fromBase64url(text) ?? []).equals(bytes)
        );
      }),
    );
    expect(fromBase64url("a+b")).toBeNull();
    expect(fromBase64url("abcde")).toBeNull();
  });

  it("checks as the CRC-32 of zlib does over UTF-16, high byte first", { timeout: 30_000 }, () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        const bytes = Buffer.from(text, "utf16le").swap16();
        return checkSum(text) === crc32(bytes).toString(16).padStart(8, "0");
      }),
    );
    // The check value of CRC-32 over "123456789" is cbf43926 (catalogue of parametrised CRC algorithms; from memory).
    expect(crc32("123456789").toString(16)).toBe("cbf43926");
  });

  it("draws a code that another program reads", async () => {
    for (const text of [await linkOf(sampleFitting), "x".repeat(longestCode)]) {
      const code = await qrCode(text);
      if (code.kind !== "code") throw new Error(code.kind);
      expect(jsQR(pixelsOf(code.picture), code.picture.size * scale, code.picture.size * scale)?.data).toBe(text);
    }
    expect(await qrCode("x".repeat(longestCode + 1))).toMatchObject({ kind: "tooLong" });
  });
});

const scale = 4;

/** Paints the path as a browser would: black runs on white, `scale` dots to a unit. */
function pixelsOf({ size, path }: { readonly size: number; readonly path: string }): Uint8ClampedArray {
  const pixels = new Uint8ClampedArray((size * scale) ** 2 * 4).fill(255);
  const runs = [...path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)];
  for (const [, x, y, width] of runs) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1) {
      const start = row * size * scale + Number(x) * scale;
      for (let dot = start; dot < start + Number(width) * scale; dot += 1) pixels.fill(0, dot * 4, dot * 4 + 3);
    }
  }
  return pixels;
}
