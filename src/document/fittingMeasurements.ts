import type { Measurements } from "../core/body/measurements";
import { requiredMeasurementNames } from "../core/body/vocabulary";
import type { FormLines } from "../core/form/formLines";
import { type FormTable, tableWithReadings } from "../core/form/formTable";
import type { LengthUnit } from "../core/lengthText";
import type { Batting } from "../core/material";
import { err, ok, type Result } from "../core/result";
import { type Millimetres, mm, ratio } from "../core/units";
import {
  type BattingEntry,
  type Entries,
  type Entry,
  entryLength,
  type SettledFitting,
  measurementEntries,
} from "./fitting";
import type { FilePath, FittingProblem } from "./fittingProblem";
import { bareEntries, measuredLines, typedLines, withoutLevels } from "./fittingLines";
import { formTables } from "./formTables";

/** A fitting in millimetres: what the person typed, over what the table they named says. Drafts play no part. */
export interface FittingMeasurements {
  readonly body: Measurements;
  readonly form: FormOfFitting;
  readonly batting: Batting;
  readonly finishingBatting: Batting | null;
  /** The error that nine in ten of this person's tape readings stay within (mm). */
  readonly readingError: Millimetres;
}

/**
 * A form that is known, from a tape or a table or both; or a table to choose from. What was `measured` of the form itself
 * is already put over the table's figures. What was read of the bare form on the person's lines is in `lines`.
 */
export type FormOfFitting = { readonly measured: Measurements; readonly lines: FormLines } & (
  | { readonly kind: "known"; readonly measurements: Measurements }
  | { readonly kind: "choose"; readonly table: FormTable }
);

/** How unsure a packet's thickness is: published lofts of one weight differ more than twofold. */
const usualDeviation = ratio(0.5);
const usualReadingError = mm(5);

export function fittingMeasurements(fitting: SettledFitting): Result<FittingMeasurements, readonly FittingProblem[]> {
  const { unit, finishingBatting, readingError } = fitting;
  const body = entriesLengths(["body"], fitting.body, unit);
  const form = formOfFitting(fitting);
  const batting = battingOf(["batting"], fitting.batting, unit);
  const finishing = finishingBatting ? battingOf(["finishingBatting"], finishingBatting, unit) : ok(null);
  const error = readingError === undefined ? ok(usualReadingError) : lengthAt(["readingError"], readingError, unit);
  if (body.ok && form.ok && batting.ok && finishing.ok && error.ok) {
    return ok({
      body: body.value,
      form: form.value,
      batting: batting.value,
      finishingBatting: finishing.value,
      readingError: error.value,
    });
  }
  return err([body, form, batting, finishing, error].flatMap((part) => (part.ok ? [] : part.problem)));
}

/** Typed lengths in millimetres, or every one of them that cannot be read. */
function entriesLengths(
  path: FilePath,
  entries: Entries,
  unit: LengthUnit,
): Result<Measurements, readonly FittingProblem[]> {
  const read = Object.entries(entries).map(([name, entry]) => ({
    name,
    length: lengthAt([...path, name], entry, unit),
  }));
  const problems = read.flatMap(({ length }) => (length.ok ? [] : length.problem));
  if (problems.length > 0) return err(problems);
  return ok(Object.fromEntries(read.flatMap(({ name, length }) => (length.ok ? [[name, length.value]] : []))));
}

function formOfFitting({ form, unit, work }: SettledFitting): Result<FormOfFitting, readonly FittingProblem[]> {
  const readings = entriesLengths(["form"], measurementEntries(form), unit);
  const table = formTables.find(({ id }) => id === form.table);
  const size = table?.sizes.find(({ name }) => name === String(form.size));
  const problems = [...(readings.ok ? [] : readings.problem), ...tableProblems(form, table, size !== undefined)];
  if (!readings.ok || problems.length > 0) return err(problems);
  const measured = readings.value;
  const ofWork = measuredLines(bareEntries(work), unit);
  if (form.readAtBodyLines === true) {
    const lines = { ...typedLines(measured), ...ofWork };
    return ok({ kind: "known", measurements: withoutLevels(measured), measured, lines });
  }
  if (table && !size) return tableToChooseFrom(table, measured, ofWork);
  return ok({ kind: "known", measurements: { ...size?.measurements, ...measured }, measured, lines: ofWork });
}

/** A table to choose from must say the required girths itself, or they were read off the form. */
function tableToChooseFrom(
  published: FormTable,
  measured: Measurements,
  lines: FormLines,
): Result<FormOfFitting, readonly FittingProblem[]> {
  const table = tableWithReadings(published, measured);
  const names = requiredMeasurementNames.filter((name) =>
    table.sizes.some(({ measurements }) => measurements[name] === undefined),
  );
  return names.length === 0
    ? ok({ kind: "choose", table, measured, lines })
    : err([{ path: ["form"], code: "tableLacks", got: table.id, names }]);
}

function tableProblems(
  form: SettledFitting["form"],
  table: FormTable | undefined,
  isSizeKnown: boolean,
): readonly FittingProblem[] {
  if (form.table === undefined) {
    return form.size === undefined
      ? []
      : [{ path: ["form", "size"], code: "sizeWithoutTable", got: String(form.size) }];
  }
  if (!table)
    return [
      { path: ["form", "table"], code: "unknownTable", got: form.table, expected: formTables.map(({ id }) => id) },
    ];
  if (form.size === undefined || isSizeKnown) return [];
  return [
    {
      path: ["form", "size"],
      code: "unknownSize",
      got: String(form.size),
      expected: table.sizes.map(({ name }) => name),
    },
  ];
}

function battingOf(
  path: FilePath,
  { name, layerThickness, spread }: BattingEntry,
  unit: LengthUnit,
): Result<Batting, readonly FittingProblem[]> {
  const thickness = lengthAt([...path, "layerThickness"], layerThickness, unit);
  return thickness.ok
    ? ok({
        name,
        layerThickness: thickness.value,
        relativeDeviation: spread === undefined ? usualDeviation : ratio(spread),
      })
    : thickness;
}

function lengthAt(path: FilePath, entry: Entry, unit: LengthUnit): Result<Millimetres, readonly FittingProblem[]> {
  const length = entryLength(entry, unit);
  return length.ok ? length : err([{ path, code: "unreadableLength", problem: length.problem }]);
}
