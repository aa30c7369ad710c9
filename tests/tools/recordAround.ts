import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import firstFile from "../../shared/demo/first.json";
import twoSidesFile from "../../shared/demo/two-sides.json";
import wholeJobFile from "../../shared/demo/whole-job.json";
import { derivation } from "../../src/app/session/derived";
import { nextOfFitting } from "../../src/command/nextOfText";
import { patternsOfText } from "../../src/command/patternsOfText";
import { buildsAbove } from "../../src/core/above/buildsAbove";
import type { Cloth } from "../../src/core/cover/cloth";
import { fineStep } from "../../src/core/lengthText";
import { ratio } from "../../src/core/units";
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
export function buildsOnRecord(): readonly string[] {
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
export function patternsOnRecord(): readonly string[] {
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
    { did: "coverChosen", cloth: "knit" },
    { did: "builtAbove", build: "neck-both" },
  ];
  return { ...wholeJobFile, ...rest, work: [...kinds.values(), ...made] };
}

type FileObject = { readonly [key: string]: unknown };
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
export function refusalsOnRecord(): readonly string[] {
  const files = {
    work: fileWithWork(),
    whole: frozenFile("fitting-1-whole"),
    older: frozenFile("fitting-1-older-keys"),
  };
  return Object.entries(files).flatMap(([name, file]) =>
    places(file).map((place) => {
      const said = [undefined, ...wrongValues].map((value) => refusal(exchanged(file, place, value)));
      return `${name} ${place.join(".")}: ${said[1]?.slice(0, 2).join(" ") ?? ""} ${digest(said)}`;
    }),
  );
}

function refusal(file: unknown): readonly string[] {
  const read = readFittingText(JSON.stringify(file) ?? "");
  return read.ok ? [] : read.problem.map((problem) => fittingProblemText(problem, fineStep.cm));
}

const frozenFile = (name: string): FileObject =>
  JSON.parse(readFileSync(resolve(import.meta.dirname, `../app/frozen/${name}.json.txt`), "utf8")) as FileObject;
