import { type LevelName, levelNames, type LevelReadingName, type MeasurementName } from "../../core/body/vocabulary";
import { bodyGroups, formGroups, sheetGroups } from "../progress/measureGroups";

/** What is read on every level line; where it lies is read above the floor on a person and below the nape on a form. */
export const lineColumns = ["Girth", "FrontArc", "BackArc", "place", "Breadth", "Depth"] as const;
export type LineColumn = (typeof lineColumns)[number];
export type Whose = "body" | "form";

const placeOf: { readonly [whose in Whose]: LevelReadingName } = { body: "Height", form: "BelowNape" };

/** The measurement that a cell of the level lines is for. */
export const lineCell = (level: LevelName, column: LineColumn, whose: Whose): MeasurementName =>
  `${level}${column === "place" ? placeOf[whose] : column}`;

const onLines: ReadonlySet<MeasurementName> = new Set(
  levelNames.flatMap((level) =>
    lineColumns.flatMap((column) => [lineCell(level, column, "body"), lineCell(level, column, "form")]),
  ),
);

/** A length of one side stands in the cell of both; the tilt of the waist is read on both sides of itself. */
const isOneSide = (name: MeasurementName): boolean => /^(left|right)[A-Z]|(Left|Right)(Front|Back)Arc$/.test(name);

const namesOf = (groups: typeof sheetGroups): readonly MeasurementName[] => groups.flatMap(({ names }) => names);
const isOf: { readonly [whose in Whose]: ReadonlySet<MeasurementName> } = {
  body: new Set(namesOf(bodyGroups)),
  form: new Set(namesOf(formGroups)),
};

export interface LengthRow {
  readonly name: MeasurementName;
  readonly whose: readonly Whose[];
}

/** What is not read on a level line, in the order of asking, with who has it: person, form, or both. */
export const lengthRows: readonly LengthRow[] = namesOf(sheetGroups)
  .filter((name) => !onLines.has(name) && !isOneSide(name))
  .map((name) => ({ name, whose: (["body", "form"] as const).filter((whose) => isOf[whose].has(name)) }));
