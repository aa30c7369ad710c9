import { tunedReading } from "../../../app/print/tuningTarget";
import { readingName, type TapePart, tapeParts } from "../../../app/progress/padProgress";
import type { Step } from "../../../app/steps/step";
import type { Reading } from "../../../core/body/reading";
import type { LevelName, MeasurementName } from "../../../core/body/vocabulary";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { onTarget } from "../../../core/tolerances";
import { mm } from "../../../core/units";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { unitNames } from "../../../text/workroom";
import { useFitting, useLengths } from "../useStore";
import { readingsAfter } from "../../../app/progress/readingsAfter";
import { HeadCells } from "../HeadCells";
import { writtenLength } from "../../../text/writtenLength";

/** What the tape should read at every line, room for what it reads, and after the structure for what is still missing. */
interface SheetReadingsProps {
  readonly plan: Plan;
  readonly step: Step;
  /** The piece that went on last before. */
  readonly after: PlannedPiece | null;
}

const parts = ["girth", "frontArc"] as const satisfies readonly TapePart[];

export function SheetReadings({ plan, step, after }: SheetReadingsProps) {
  const { step: lengths, write } = useLengths();
  const { readHead, structureRead, finalRead } = printingWords;
  const isLast = after === (plan.pieces.at(-1) ?? null);
  const taken = readingsAfter(useFitting()).get(after?.id ?? "") ?? [];
  const bare = (value: number | undefined): string =>
    value === undefined ? "" : writtenLength(mm(value), lengths, "bare");
  const read = (name: MeasurementName) => bare(taken.find((one) => one.name === name)?.length);
  const heads = [readHead.expect, readHead.reads, ...(isLast ? [] : [readHead.end, readHead.short])];
  const cells = (level: LevelName, part: (typeof parts)[number]): readonly string[] => {
    const name = readingName(level, part);
    return [bare(step.expected[name]), read(name), ...(isLast ? [] : [bare(tunedReading(plan, level, part)), ""])];
  };
  return (
    <>
      <table className="sheet-table sheet-readings">
        <thead>
          <tr>
            <th rowSpan={2} scope="col">
              {readHead.line}
            </th>
            {parts.map((part) => (
              <th key={part} colSpan={heads.length} scope="colgroup">
                {readHead[part]}
              </th>
            ))}
            {isLast ? null : <th scope="colgroup">{readHead.back}</th>}
          </tr>
          <tr>
            <HeadCells words={[...parts.flatMap(() => heads), ...(isLast ? [] : [readHead.short])]} />
          </tr>
        </thead>
        <tbody>
          {step.levels.map((level) => (
            <tr key={level}>
              <th scope="row">{levelWords[level]}</th>
              {parts.flatMap((part) => cells(level, part).map((cell, i) => <td key={part + heads[i]}>{cell}</td>))}
              {isLast ? null : <td />}
            </tr>
          ))}
        </tbody>
      </table>
      <p>{isLast ? finalRead(write(onTarget)) : structureRead}</p>
    </>
  );
}

/** What the tape says of the body and of the bare form at each level, guesses marked as such. */
export function PrintMeasurements({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const { measureHead } = printingWords;
  const bare = (value: Reading["value"]): string => writtenLength(value, step, "bare");
  const shown = ({ kind, value }: Reading): string => `${kind === "estimated" ? "≈" : ""}${bare(value)}`;
  const parts = { body: tapeParts, form: ["girth", "frontArc"] } as const;
  return (
    <div>
      <table className="sheet-table sheet-measures">
        <thead>
          <tr>
            <HeadCells words={[`${measureHead.level}, ${unitNames[unit]}`]} rows={2} />
            {(["body", "form"] as const).map((whose) => (
              <th key={whose} scope="colgroup" colSpan={parts[whose].length}>
                {measureHead[whose]}
              </th>
            ))}
          </tr>
          <tr>
            <HeadCells words={[...parts.body, ...parts.form].map((part) => measureHead.parts[part])} />
          </tr>
        </thead>
        <tbody>
          {plan.levels.map(({ name, body, form }) => (
            <tr key={name}>
              <th scope="row">{levelWords[name]}</th>
              {parts.body.map((part) => (
                <td key={`body${part}`}>{shown(body[part])}</td>
              ))}
              {parts.form.map((part) => (
                <td key={`form${part}`}>{shown(form[part])}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p>{printingWords.guessNote}</p>
    </div>
  );
}
