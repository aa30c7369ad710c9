import { type Fitting, writeFitting } from "../../document/fitting";
import { readFitting } from "../../document/readFitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { brokenJsonLimit, type JsonLimit, type JsonSize, jsonLimits, jsonSize } from "../../document/jsonLimits";
import { err, ok, type Result } from "../../core/result";
import { checkSum } from "../storage/checkSum";
import { sortedText } from "../storage/fittingText";

/**
 * Files that go out and come in: one fitting, or many in one bundle. One fitting is the plain fitting file that a
 * person may write by hand, with a check at its head; a bundle is a list of such files with a check of its own. What
 * comes in may be anyone's: it is limited in size, checked, read as a whole or not at all.
 */
export type FileProblem =
  | { readonly code: "empty" }
  | { readonly code: "tooLarge"; readonly bytes: number; readonly most: number }
  | { readonly code: "notText" }
  | { readonly code: "notJson" }
  | { readonly code: "newerBundle"; readonly got: number; readonly newest: number }
  /** More in it than any backup of this tool holds. */
  | { readonly code: "tooMuch"; readonly what: JsonLimit; readonly most: number }
  /** The check does not fit: damaged on the way, or changed by hand without taking the check out. */
  | { readonly code: "damaged"; readonly number: number | null }
  | {
      readonly code: "badFitting";
      /** Which fitting of the file, counted from 1. */
      readonly number: number;
      readonly problems: readonly FittingProblem[];
    };

export const bundleFormat = "padwright fittings";
const bundleVersion = 1;
export const largestFile = 32_000_000;
/** A bundle of a file's size has a value every dozen characters; each fitting lies two levels deep in it. */
const bundleLimits: JsonSize = {
  ...jsonLimits,
  characters: largestFile,
  depth: jsonLimits.depth + 2,
  values: 3_000_000,
};

export const writeFittingFile = (fitting: Fitting): string =>
  `${JSON.stringify(sealed(writeFitting(fitting)), null, 2)}\n`;

/** The fittings as bundles in their order, as few as can each be opened again: one, unless there are very many. */
export function bundleParts(
  fittings: readonly Fitting[],
  most: FileRoom = { bytes: largestFile, values: bundleLimits.values },
): readonly (readonly Fitting[])[] {
  const parts: Fitting[][] = [[]];
  let taken = bundleHead;
  for (const fitting of fittings) {
    const room = roomOf(fitting);
    const isFull = taken.bytes + room.bytes > most.bytes || taken.values + room.values > most.values;
    if (isFull && parts.at(-1)?.length !== 0) {
      parts.push([]);
      taken = bundleHead;
    }
    parts.at(-1)?.push(fitting);
    taken = { bytes: taken.bytes + room.bytes, values: taken.values + room.values };
  }
  return parts;
}

interface FileRoom {
  readonly bytes: number;
  readonly values: number;
}

/** More than what stands round the fittings. */
const bundleHead: FileRoom = { bytes: 1_000, values: 20 };

function roomOf(fitting: Fitting): FileRoom {
  const text = JSON.stringify([[sealed(writeFitting(fitting))]], null, 1);
  return { bytes: new TextEncoder().encode(text).length, values: jsonSize(text, bundleLimits).values };
}

export function writeBundle(fittings: readonly Fitting[], exportedAt: string): string {
  const bundle = {
    format: bundleFormat,
    version: bundleVersion,
    exportedAt,
    fittings: fittings.map((fitting) => sealed(writeFitting(fitting))),
  };
  return `${JSON.stringify({ ...bundle, check: bundleCheck(bundle) }, null, 1)}\n`;
}

/** Reads a file somebody chose, here and now. Its size is looked at before anything of it is. */
export async function readBlob(file: Blob): Promise<FileReading> {
  if (file.size > largestFile) return err([{ code: "tooLarge", bytes: file.size, most: largestFile }]);
  const bytes = await file.arrayBuffer().catch(() => null);
  return bytes === null ? err([{ code: "notText" }]) : readFile(new Uint8Array(bytes));
}

/** Every fitting in a file, or every reason why it is none of ours. */
export type FileReading = Result<readonly Fitting[], readonly FileProblem[]>;

export function readFile(bytes: Uint8Array): FileReading {
  if (bytes.length > largestFile) return err([{ code: "tooLarge", bytes: bytes.length, most: largestFile }]);
  const text = decoded(bytes);
  if (text === null) return err([{ code: "notText" }]);
  if (text.trim() === "") return err([{ code: "empty" }]);
  const broken = brokenJsonLimit(text, bundleLimits);
  if (broken !== null) return err([{ code: "tooMuch", what: broken, most: bundleLimits[broken] }]);
  const file = parsed(text);
  if (file === undefined) return err([{ code: "notJson" }]);
  if (isObject(file) && file.format === bundleFormat) return readBundle(file);
  const read = readSealed(file, text, 1);
  return read.ok ? ok([read.value]) : err([read.problem]);
}

interface Bundle {
  readonly [name: string]: unknown;
}

function readBundle(file: Bundle): FileReading {
  const { version, fittings } = file;
  if (typeof version === "number" && version > bundleVersion) {
    return err([{ code: "newerBundle", got: version, newest: bundleVersion }]);
  }
  const check = bundleCheck(file);
  if (!Array.isArray(fittings) || version !== bundleVersion || check === null || file.check !== check)
    return err([{ code: "damaged", number: null }]);
  const read: Fitting[] = [];
  const problems: FileProblem[] = [];
  for (const [i, fitting] of fittings.entries()) {
    const one = readSealed(fitting, JSON.stringify(fitting), i + 1);
    if (one.ok) read.push(one.value);
    else problems.push(one.problem);
    if (problems.length >= mostBadFittings) break;
  }
  return problems.length > 0 ? err(problems) : ok(read);
}

/** More than these nobody reads. */
const mostBadFittings = 12;
const mostProblems = 50;

/** Covers the head and the checks of the fittings, each of which covers its own fitting. */
function bundleCheck({ exportedAt, fittings, ...rest }: Bundle): string | null {
  const checks = Array.isArray(fittings) ? fittings.map((fitting) => (isObject(fitting) ? fitting.check : null)) : null;
  const heads = Object.keys(rest).filter((name) => name !== "check");
  const covered = checks?.every((check) => typeof check === "string") && typeof exportedAt === "string";
  return covered ? seal(JSON.stringify([bundleFormat, heads.toSorted(), exportedAt, checks])) : null;
}

/** The check stands first: a piece lost out of the middle then takes with it something that every fitting must have. */
function sealed(file: { readonly [name: string]: unknown }): { readonly [name: string]: unknown } {
  const { check, ...rest } = file;
  return { check: seal(sortedText(rest)), ...rest };
}

/** A fitting file without a check was written by hand and is as welcome; with a check it has to fit. */
function readSealed(file: unknown, text: string, number: number): Result<Fitting, FileProblem> {
  const limit = brokenJsonLimit(text);
  if (limit !== null) {
    return err({
      code: "badFitting",
      number,
      problems: [{ path: [], code: "tooLarge", what: limit, most: jsonLimits[limit] }],
    });
  }
  if (!isObject(file)) return readPlain(file, number);
  const { check, ...rest } = file;
  const isSealed = check !== undefined || Object.entries(rest).some(isSeal);
  return isSealed && check !== seal(sortedText(rest)) ? err({ code: "damaged", number }) : readPlain(rest, number);
}

function readPlain(file: unknown, number: number): Result<Fitting, FileProblem> {
  const read = readFitting(file);
  return read.ok ? read : err({ code: "badFitting", number, problems: read.problem.slice(0, mostProblems) });
}

const seal = (text: string): string => `crc32:${checkSum(text)}`;
/** A check under a damaged name is still to be recognised as one; people may write what they like in their notes. */
const isSeal = ([name, value]: readonly [string, unknown]): boolean =>
  name !== "title" && name !== "notes" && typeof value === "string" && value.includes("crc32:");

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text) as unknown;
  } catch {
    return undefined;
  }
}

const isObject = (value: unknown): value is { readonly [name: string]: unknown } =>
  typeof value === "object" && value !== null && !Array.isArray(value);
