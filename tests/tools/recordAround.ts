import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import firstFile from "../../shared/demo/first.json";
import twoSidesFile from "../../shared/demo/two-sides.json";
import wholeJobFile from "../../shared/demo/whole-job.json";
import { planOfText } from "../../src/command/planOfText";
import type { Measurements } from "../../src/core/body/measurements";
import { checkMeasurements } from "../../src/core/body/plausibility";
import { levelNames, type MeasurementName } from "../../src/core/body/vocabulary";
import { clothRows } from "../../src/core/supplies/clothRows";
import { pieceFromWork } from "../../src/document/fitting";
import type { AnyPieceFile } from "../../src/document/fittingSchema";
import { readKeptFitting, setAsideCount } from "../../src/document/keptFitting";
import { zonesV1 } from "../../src/document/pieceFileV1Schema";
import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import { patternsOfText } from "../../src/command/patternsOfText";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import type { Cloth } from "../../src/core/cover/cloth";
import { fineStep } from "../../src/core/lengthText";
import { mm, ratio } from "../../src/core/units";
import { readFittingText } from "../../src/document/readFitting";
import { fittingProblemText } from "../../src/text/problems";
import { drawRoom, walkJob } from "./jobWalk";
import { fittingFileOf, person } from "./people";
import { peopleAbove } from "./peopleAbove";
import { chance } from "./peopleChance";

/** What is on record besides plans and jobs: builds above the bust, patterns, and what is said of files that cannot be right. */

const digest = (value: unknown): string =>
  createHash("sha256").update(JSON.stringify(value)).digest("hex").slice(0, 16);
const tenth = (value: number): number => Math.round(10 * value) / 10;

/** The builds above the bust of made-up people: what each does and what the tape reads before and after, in tenths of a millimeter. */
function buildsOnRecord(): readonly string[] {
  return peopleAbove(24).flatMap(({ seed, body, form, batting }) =>
    buildsAbove(body, form, batting).map((build) => {
      const { act } = build;
      const parts = act.what === "layers" ? act.layers : [];
      const read = build.readings.map(({ name, before, after, person: wanted, stays }) => [
        name,
        ...[before, after, wanted].map((length) => (length === null ? null : tenth(length))),
        stays === null ? null : [stays.sense, tenth(stays.amount)],
      ]);
      return `${seed} ${build.id} ${act.what} ${parts.length} ${JSON.stringify(read)} ${digest(rounded(act))}`;
    }),
  );
}

/** Numbers in tenths, so that the last digit of a processor's sine does not count. */
function rounded(value: unknown): unknown {
  if (typeof value === "number") return tenth(value);
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}

const clothes: { readonly [name: string]: Cloth } = {
  knit: { kind: "knit", stretch: ratio(0.1), shortening: ratio(0.03) },
  woven: { kind: "woven", ease: ratio(0) },
};

/** Every part of what is cut for sample people: how many points, how long each edge, and of the whole part a digest. */
function patternsOnRecord(): readonly string[] {
  const files = [wholeJobFile, twoSidesFile, firstFile, fittingFileOf(person(3)), fittingFileOf(person(11))];
  return files.flatMap((file, i) =>
    Object.entries(clothes).flatMap(([name, cloth]) => {
      const made = patternsOfText(JSON.stringify(file), cloth);
      if (!made.ok) return made.problem;
      return made.value.file.parts.map((part) => {
        const edges = part.edges.map(({ id, lengthMm, sewnTo }) => `${id} ${tenth(lengthMm)} ${sewnTo ?? "free"}`);
        return `${i} ${name} ${part.id} ${part.outline.length} ${digest(rounded(part))} ${edges.join(", ")}`;
      });
    }),
  );
}

/** Values that stand where another was expected. */
const wrongValues: readonly unknown[] = [null, true, -1, 0, 2.5, 1e9, "", "x", "12 1/2", "5 ft", [], {}];

/** A fitting in whose log every kind of entry stands once. */
function fileWithWork(): FileObject {
  const derive = derivation();
  let last: unknown = null;
  walkJob(person(18), drawRoom(chance(70_018)), {}, (fitting) => {
    last = fitting;
    return nextOfFitting(fitting, derive);
  });
  const { work, ...rest } = JSON.parse(JSON.stringify(last)) as { readonly work: readonly { readonly did: string }[] };
  const kinds = new Map(work.map((entry) => [entry.did, entry]));
  const made = [
    { did: "made", what: "coverCut" },
    { did: "coverChosen", cloth: "knit", marked: 10, across: "13 cm", along: 9.6 },
    { did: "builtAbove", build: "neck-both" },
  ];
  return { ...wholeJobFile, ...rest, work: [...kinds.values(), ...made] };
}

type FileObject = {
  readonly [key: string]: unknown;
  readonly work?: readonly { readonly did?: string; readonly piece?: AnyPieceFile }[];
};
type Place = readonly (string | number)[];

/** Every place of a file, of a long list the first and the last entry. */
function places(value: unknown, at: Place = []): readonly Place[] {
  if (typeof value !== "object" || value === null) return [at];
  const all = Object.keys(value);
  const keys = Array.isArray(value) && all.length > 20 ? [0, value.length - 1] : all;
  return [at, ...keys.flatMap((key) => places((value as FileObject)[key], [...at, key]))];
}

/** The file with something else at one place; undefined leaves it out. */
function exchanged(value: unknown, [key, ...rest]: Place, other: unknown): unknown {
  if (key === undefined) return other;
  const copy = (Array.isArray(value) ? [...(value as readonly unknown[])] : { ...(value as FileObject) }) as {
    [key: string]: unknown;
  };
  copy[key] = exchanged(copy[key], rest, other);
  return copy;
}

/** What is said of a file with a wrong value at one place, for every place: the sentences of one, and a digest of all. */
function refusalsOnRecord(): readonly string[] {
  const files = {
    work: fileWithWork(),
    whole: frozenFile("fitting-1-whole"),
    older: frozenFile("fitting-1-older-keys"),
  };
  return Object.entries(files).flatMap(([name, file]) =>
    places(file).map((place) => {
      const said = [
        ...[undefined, ...wrongValues].map((value) => refusal(exchanged(file, place, value))),
        refusal(misspelt(file, place)),
      ];
      return `${name} ${place.join(".")}: ${said[1]?.slice(0, 2).join(" ") ?? ""} ${digest(said)}`;
    }),
  );
}

/** The file with one letter too many in the key at a place. */
function misspelt(file: unknown, place: Place): unknown {
  const key = place.at(-1);
  if (typeof key !== "string") return file;
  const value = place.reduce((inside: unknown, one) => (inside as FileObject)[one], file);
  return exchanged(exchanged(file, place, undefined), [...place.slice(0, -1), `${key}s`], value);
}

/** What is kept of a saved fitting in whose log one entry cannot be, and what becomes of pieces that older releases wrote. */
function keptOnRecord(): readonly string[] {
  const files = { work: fileWithWork(), whole: frozenFile("fitting-1-whole") };
  const kept = Object.entries(files).flatMap(([name, file]) =>
    (file.work ?? []).map((_, at) => {
      const read = readKeptFitting(JSON.stringify(exchanged(file, ["work", at, "did"], "dreamt")));
      return `${name} ${at}: ${read.ok ? `${setAsideCount(read.value)} set aside` : "refused"} ${digest(read)}`;
    }),
  );
  const pieces = Object.values(files).flatMap((file) =>
    (file.work ?? []).flatMap(({ piece }) => (piece === undefined ? [] : [piece])),
  );
  const older = pieces.flatMap((piece) =>
    "kind" in piece
      ? []
      : zonesV1.flatMap((zone) => [
          { ...piece, zone },
          { ...piece, zone, anchor: "centerBack" as const, id: `${piece.id}-2` },
        ]),
  );
  const read = [...pieces, ...older].map((file) => {
    const { id, kind, zone, level, number, anchor, layers } = pieceFromWork(file);
    return `${[id, kind, zone, level, number, anchor].join(" ")} ${digest(rounded(layers))}`;
  });
  return [...kept, ...read];
}

/** How a typist's figures come out wrong: in the other unit, a digit off, a line lower, a height above the floor. */
const slips: readonly ((length: number) => number)[] = [
  (length) => length * 2.54,
  (length) => length / 2.54,
  (length) => length * 10,
  (length) => length + 100,
  (length) => length * 0.8,
  () => 0,
];

/** What is asked about the measurements of people, typed rightly and with one slip: the code of each problem and its names. */
function questionsOnRecord(): readonly string[] {
  return Array.from({ length: 15 }, (_, seed) => person(seed + 1)).flatMap(({ seed, body, form }) =>
    [body, form, byHeights(body), byHeights(form)].flatMap((typed, i) => {
      const whose = i % 2 === 0 ? "body" : "form";
      const asked = (lengths: Measurements) => checkMeasurements(lengths, whose);
      const names = Object.keys(typed) as readonly MeasurementName[];
      const slipped = names.map((name) => {
        const found = slips.map((slip) => asked({ ...typed, [name]: mm(slip(typed[name] ?? 0)) }));
        const codes = new Set(found.flat().map(({ code, names: those }) => `${code} ${those.join("+")}`));
        const without = Object.fromEntries(Object.entries(typed).filter(([other]) => other !== name));
        return `${name} ${[...codes].join(", ")} ${digest(rounded([found, asked(without)]))}`;
      });
      const inOtherUnit = slips
        .slice(0, 2)
        .map((slip) => Object.fromEntries(Object.entries(typed).map(([name, length]) => [name, mm(slip(length))])));
      const all = [typed, ...inOtherUnit, onlyHeightsSlipped(typed)].map(asked);
      return [`${seed} ${whose} ${digest(rounded(all))} ${digest(slipped)}`, ...(seed < 4 ? slipped : [])];
    }),
  );
}

/** The same lines, read above the floor. */
function byHeights(lengths: Measurements): Measurements {
  const nape = 1400;
  return Object.fromEntries([
    ["napeHeight", mm(nape)],
    ...Object.entries(lengths).map(([name, length]) =>
      name.endsWith("BelowNape") && levelNames.some((level) => name === `${level}BelowNape`)
        ? [name.replace("BelowNape", "Height"), mm(nape - length)]
        : [name, length],
    ),
  ]) as Measurements;
}

const onlyHeightsSlipped = (lengths: Measurements): Measurements =>
  Object.fromEntries(
    Object.entries(lengths).map(([name, length]) => [name, name.endsWith("Height") ? mm(length / 2.54) : length]),
  );

/** Plans for forms that are short, larger somewhere, or known by a size chart alone, and for two battings: figures and a digest. */
function oddPlansOnRecord(): readonly string[] {
  return Array.from({ length: 4 }, (_, i) => person(5100 + i)).flatMap((one) => {
    const file = fittingFileOf(one);
    const times = (share: number, part: string) =>
      Object.fromEntries(
        Object.entries(file.form).map(([name, length]) => [name, name.startsWith(part) ? length * share : length]),
      );
    const forms = {
      short: { ...file.form, lowerEdgeBelowNape: 520 },
      shortest: { ...file.form, lowerEdgeBelowNape: 360 },
      largerWaist: times(1.2, "waist"),
      largerBust: times(1.15, "bust"),
      chart: { table: "misses" },
      readAtLines: { ...file.form, readAtBodyLines: true },
    };
    const thin = { name: "thin", layerThickness: 2.5, spread: 0.3 };
    return [
      ...Object.entries(forms).map(([name, form]) => planLine(`${one.seed} ${name}`, { ...file, form })),
      planLine(`${one.seed} thin`, { ...file, finishingBatting: thin }),
    ];
  });
}

/** A plan in a line: pieces with their layers, how much stays short, what the form's owner has to settle, and a digest of it all. */
function planLine(title: string, file: object): string {
  const made = planOfText(JSON.stringify(file));
  if (!made.ok) return `${title}: ${made.problem.join(" ")}`;
  const { pieces, shortfalls, matters } = made.value;
  const counts = pieces.map(({ name, layers }) => `${name} ${layers.length}`);
  return `${title}: ${counts.join(", ")}; ${shortfalls.length} short, ${JSON.stringify(matters)} ${digest(rounded(made.value))}`;
}

/** Plans for people of whom more was read than girths, or half of what is usual: one side of a half, depths, the lower breast, a lean. */
function oddBodiesOnRecord(): readonly string[] {
  return Array.from({ length: 4 }, (_, i) => person(5200 + i)).flatMap((one) => {
    const file = fittingFileOf(one);
    const { bustGirth, waistGirth, fullHipGirth } = file.body as { readonly [name: string]: number };
    const [bust, waist, hip] = [bustGirth ?? 0, waistGirth ?? 0, fullHipGirth ?? 0];
    const also = {
      lowerBreast: { lowerBreastGirth: Math.round(0.96 * bust) },
      depths: {
        bustDepth: Math.round(0.27 * bust),
        waistDepth: Math.round(0.25 * waist),
        fullHipBreadth: Math.round(0.36 * hip),
      },
      leftAlone: { bustLeftFrontArc: Math.round(0.28 * bust), waistRightFrontArc: Math.round(0.27 * waist) },
      rightBack: { waistRightBackArc: Math.round(0.25 * waist), fullHipLeftBackArc: Math.round(0.27 * hip) },
      leaning: {
        waistToFloorFront: 1010,
        waistToFloorBack: 1030,
        waistToFloorLeft: 1030,
        waistToFloorRight: 1012,
      },
    };
    return Object.entries(also).map(([name, lengths]) =>
      planLine(`${one.seed} ${name}`, { ...file, body: { ...file.body, ...lengths } }),
    );
  });
}

/** How panels lie on fabric of three widths. */
function rowsOnRecord(): readonly string[] {
  const panels = Array.from({ length: 11 }, (_, i) => ({
    id: `panel ${i}`,
    width: 90 + ((i * 137) % 260),
    height: 500 + ((i * 71) % 240),
  }));
  return [1500, 1150, 700, 350, 200].map((width) => JSON.stringify(clothRows(panels, width)));
}

function refusal(file: unknown): readonly string[] {
  const read = readFittingText(JSON.stringify(file) ?? "");
  return read.ok ? [] : read.problem.map((problem) => fittingProblemText(problem, fineStep.cm));
}

const frozenFile = (name: string): FileObject =>
  JSON.parse(readFileSync(resolve(import.meta.dirname, `../app/frozen/${name}.json.txt`), "utf8")) as FileObject;

export const recordedAround: { readonly [title: string]: () => readonly string[] } = {
  "builds above the bust": buildsOnRecord,
  "patterns of sample people": patternsOnRecord,
  "panels on fabric": rowsOnRecord,
  "plans for odd forms": oddPlansOnRecord,
  "plans for odd bodies": oddBodiesOnRecord,
  "what is asked about measurements": questionsOnRecord,
  "what is said of files that cannot be right": refusalsOnRecord,
  "what is kept of them, and older pieces": keptOnRecord,
};
