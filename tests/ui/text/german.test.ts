import { readdirSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { mm } from "../../../src/core/units";
import { battingGuesses, battingWords } from "../../../src/text/batting";
import { battingNames } from "../../../src/text/de/batting";
import { classWords } from "../../../src/text/de/classView";
import { dateText } from "../../../src/text/de/moment";
import { pageHead } from "../../../src/text/language";
import { namesNumber } from "../../../src/text/de/withoutFigures";
import { sampleTitle } from "../../../src/text/de/workroom";
import { writtenLength } from "../../../src/text/de/writtenLength";
import { germanPairs } from "../../support/germanPairs";

/** Words that are the same in both languages, and values that are no words. */
const alike: ReadonlySet<string> = new Set(["Padwright", "T", "Arm", "Name", "Person", "cm", "mm", "in", "In cm"]);

const root = resolve(import.meta.dirname, "../../..");
const folder = resolve(root, "src/text/de");
const files = readdirSync(folder)
  .filter((file) => file.endsWith(".ts"))
  .map((file) => file.replace(/\.ts$/, ""))
  .toSorted();

/** Where two modules differ in shape, and where the translation says nothing, or what English says. */
function faults(english: unknown, german: unknown, at: string): readonly string[] {
  if (english === german && (typeof english === "object" || typeof english === "function")) return [];
  if (typeof english !== typeof german || Array.isArray(english) !== Array.isArray(german))
    return [`${at}: other kind`];
  if (typeof english === "string") return textFaults(english, german as string, at);
  if (typeof english === "function") {
    return english.length === (german as () => unknown).length ? [] : [`${at}: other number of parameters`];
  }
  if (typeof english !== "object" || english === null || german === null) return [];
  const [own, other] = [english as Branch, german as Branch];
  const names = [...new Set([...Object.keys(own), ...Object.keys(other)])];
  return names.flatMap((name) => {
    if (!(name in own)) return [`${at}.${name}: not in English`];
    if (!(name in other)) return [`${at}.${name}: missing`];
    return faults(own[name], other[name], `${at}.${name}`);
  });
}

interface Branch {
  readonly [name: string]: unknown;
}

function textFaults(english: string, german: string, at: string): readonly string[] {
  if (english.trim() === "") return german === english ? [] : [`${at}: English says nothing here`];
  if (german.trim() === "") return [`${at}: empty`];
  return german === english && /\p{L}{2}/u.test(english) && !alike.has(english) ? [`${at}: still “${english}”`] : [];
}

describe("the German words", () => {
  test.each(Object.entries(germanPairs))("of %s have the names and shapes of the English ones", (name, pair) => {
    expect(faults({ ...pair.english }, { ...pair.german }, name)).toEqual([]);
  });

  test("are all laid beside the English ones", () => {
    expect(Object.keys(germanPairs).toSorted()).toEqual(files);
  });

  test("take other German words wherever there are any", () => {
    const wrong = files.flatMap((file) => {
      const text = readFileSync(resolve(folder, `${file}.ts`), "utf8");
      const taken = [...text.matchAll(/^(?:import|export) (?!type )[^;]*? from "\.\.\/(\w+)";/gm)].map(
        ([, name]) => name ?? "",
      );
      return taken
        .filter((name) => name !== file && files.includes(name))
        .map((name) => `${file} takes English ${name}`);
    });
    expect(wrong).toEqual([]);
  });

  test("write figures and days as German does", () => {
    expect(writtenLength(mm(885), "0.1 cm")).toBe("88,5 cm");
    expect(writtenLength(mm(1234.5), "0.1 mm")).toBe("1.234,5 mm");
    expect(writtenLength(mm(885), "0.5 cm", "bare")).toBe("88,5");
    expect(writtenLength(mm(-5), "0.5 cm")).toBe("-0,5 cm");
    expect(writtenLength(mm(882.65), "1/8 in")).toBe("34 3/4 in");
    expect(dateText("2031-03-09")).toBe("09.03.2031");
  });

  /** Seen to fail on names that only the usual batting had in German. */
  test("call the battings of sample people and of the English page in German, and leave what a person wrote", () => {
    const demos = readdirSync(resolve(root, "shared/demo")).map((name) => `shared/demo/${name}`);
    const samples = ["shared/demo-fitting.json", ...demos].map((path) => {
      return (JSON.parse(readFileSync(resolve(root, path), "utf8")) as Parameters<typeof battingNames>[0]).batting.name;
    });
    const shown = (name: string) => battingNames({ batting: { name } }).building;
    expect(samples.length).toBeGreaterThan(5);
    for (const name of [...samples, ...battingGuesses.map((guess) => guess.name), battingWords.usual])
      expect(shown(name), name).toMatch(/vlies|Baumwolle/i);
    expect(shown("bonded batting from Ilse")).toBe("bonded batting from Ilse");
    expect(shown("constructor")).toBe("constructor");
  });

  test("hide a note with a figure beside a unit, in German as in English", () => {
    for (const text of ["zwei Zentimeter mehr", "Eine Handbreit, zollbreit", "einen halben Meter", "34", "34 inches"])
      expect(namesNumber(text), text).toBe(true);
    for (const text of ["Laser statt Schnur", "Noch einmal vorn.", "Den Perimeter ansehen"])
      expect(namesNumber(text), text).toBe(false);
  });

  test("name a sample person as one, once", () => {
    expect(classWords.madeUp("Orla (sample person)")).toBe("Orla (Beispielperson)");
    expect(classWords.madeUp("Orla")).toBe("Orla (Beispielperson)");
    expect(sampleTitle("Ilse")).toBe("Ilse");
  });

  test("find the sentences of the page where they stand in English", () => {
    expect(readFileSync(resolve(root, "index.html"), "utf8")).toContain(pageHead.noScript);
    expect(readFileSync(resolve(root, "public/manifest.webmanifest"), "utf8")).toContain(pageHead.description);
  });
});

test.each([
  [{ a: "Cut" }, {}, "x.a: missing"],
  [{ a: "Cut" }, { a: "Cut" }, "x.a: still “Cut”"],
  [{ a: "Cut" }, { a: " " }, "x.a: empty"],
  [{ a: "Cut" }, { a: "Schneiden", b: "c" }, "x.b: not in English"],
  [{ a: (one: string): string => one }, { a: (): string => "" }, "x.a: other number of parameters"],
  [{ a: ["One", "Two"] }, { a: ["Eins"] }, "x.a.1: missing"],
  [{ a: "Cut" }, { a: (): string => "Schneiden" }, "x.a: other kind"],
])("%o beside %o is found", (english, german, fault) => {
  expect(faults(english, german, "x")).toEqual([fault]);
});
