import { Fragment, useMemo } from "react";
import { stepFacts } from "../../../app/steps/stepFacts";
import type { LengthStep } from "../../../core/lengthText";
import type { LayerCut } from "../../../core/padding/layerCut";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { useCutFrom, useDerived } from "../useDerived";
import { cutSketch } from "../../drawing/cutSketch";
import { Drawing } from "../../drawing/Drawing";
import { shortCautions } from "../../../text/cautions";
import { finishingWords } from "../../../text/finishing";
import { numberedName } from "../../../text/pieces";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { stepSentence } from "../../../text/steps";
import { useFitting, useLengths } from "../useStore";
import { readingsAfter, takenByLevel } from "../../../app/progress/readingsAfter";
import { SheetBox } from "./SheetPage";
import { SheetReadings } from "./SheetReadings";
import type { SheetPart, SheetStep } from "../../../app/steps/sheetSteps";
import { StepRoom } from "./StepRoom";
import { TuningLegend, TuningPlace, TuningTable } from "./TuningTable";
import { writtenLength } from "../../../text/writtenLength";

/** Every step of the work in its order, in the sentences that the screen and the command say, with boxes to tick and room to write. */
export function PrintSteps({ plan, parts }: { readonly plan: Plan; readonly parts: readonly SheetPart[] }) {
  return grouped(parts).map((group, i) => {
    const [{ kind }] = group;
    const heading = kind === "measure" ? null : printingWords.parts[kind];
    return (
      <Fragment key={`${kind}${String(i)}`}>
        {heading === null ? null : <h3 className="sheet-sub">{heading}</h3>}
        <div className={group[0].piece === null ? undefined : "sheet-abreast"}>
          {group.map((part) =>
            part.piece === null ? (
              <SheetSteps key={kind} plan={plan} part={part} />
            ) : (
              <PieceSteps key={part.piece.id} plan={plan} part={part} piece={part.piece} />
            ),
          )}
        </div>
        {kind === "tuning" ? <TuningLegend /> : null}
      </Fragment>
    );
  });
}

type Group = readonly [SheetPart, ...SheetPart[]];

/** Parts of one kind that follow each other lie under one heading. */
function grouped(parts: readonly SheetPart[]): readonly Group[] {
  const groups: [SheetPart, ...SheetPart[]][] = [];
  for (const part of parts) {
    const last = groups.at(-1);
    if (last?.[0].kind === part.kind) last.push(part);
    else groups.push([part]);
  }
  return groups;
}

function SheetSteps({ plan, part }: { readonly plan: Plan; readonly part: SheetPart }) {
  const [first] = part.steps;
  return (
    <section className={part.kind === "before" || part.kind === "making" ? undefined : "sheet-keep"}>
      {part.kind === "before" ? <p>{`${shortCautions("firstPiece")} ${printingWords.wearers}`}</p> : null}
      {part.kind === "ending" ? <p>{shortCautions("securing")}</p> : null}
      <StepList plan={plan} steps={part.steps} />
      {part.kind === "measure" && first !== undefined ? (
        <SheetReadings plan={plan} step={first.step} after={part.after} />
      ) : null}
    </section>
  );
}

function PieceSteps({
  plan,
  part,
  piece,
}: {
  readonly plan: Plan;
  readonly part: SheetPart;
  readonly piece: PlannedPiece;
}) {
  const { step } = useLengths();
  const taken = readingsAfter(useFitting()).get(piece.id) ?? [];
  const name = numberedName(piece);
  const isTuning = piece.kind === "tuning";
  const sizes = piece.cut.map((cut) => sizeText(cut, step));
  const read = takenByLevel(taken).map(({ level, parts }) =>
    printingWords.readAt(
      levelWords[level],
      parts.map((one) => [one.part, writtenLength(one.length, step, "bare")] as const),
    ),
  );
  return (
    <section className="sheet-piece" data-piece={piece.id}>
      <header>
        <h4>{name}</h4>
        <Drawing scene={cutSketch(piece, name)} hidden />
      </header>
      {isTuning ? <TuningTable plan={plan} piece={piece} /> : null}
      <StepList plan={plan} steps={part.steps} />
      {isTuning ? <TuningPlace plan={plan} piece={piece} /> : null}
      <p>{piece.cut.length > 1 ? printingWords.layers(sizes) : printingWords.lines(sizes)}</p>
      {read.length === 0 ? null : <p>{printingWords.itRead(read.join("; "))}</p>}
    </section>
  );
}

function sizeText(cut: LayerCut, step: LengthStep): string {
  if (cut.shape === "bought") return printingWords.readyMade;
  if (cut.shape === "disc") return printingWords.across(writtenLength(cut.diameter, step));
  const sides = cut.shape === "strip" ? [] : cut.widths.map(({ left, right }) => left + right);
  const widest = Math.max(cut.topWidth, cut.bottomWidth, ...sides) as typeof cut.height;
  return `${writtenLength(widest, step, "bare")} × ${writtenLength(cut.height, step)}`;
}

function StepList({ plan, steps }: { readonly plan: Plan; readonly steps: readonly SheetStep[] }) {
  const { step: lengths } = useLengths();
  const cutFrom = useCutFrom();
  const fitting = useFitting();
  const body = useDerived().lengths?.body;
  const facts = useMemo(() => (body === undefined ? null : stepFacts(plan, body, fitting)), [plan, body, fitting]);
  const saying = { lengths, levels: plan.levels, pieces: plan.pieces, cutFrom, ...(facts === null ? {} : { facts }) };
  return (
    <ul className="sheet-steps">
      {steps.map(({ step, standing }) => (
        <li key={`${step.do}${step.build?.id ?? ""}`} data-step={step.do}>
          <SheetBox isTicked={standing === "done"} />
          <div>
            <p>
              {standing === "leftOut" ? <strong>{finishingWords.leftOut} </strong> : null}
              {stepSentence(step, saying)}
            </p>
            <StepRoom step={step} plan={plan} />
          </div>
        </li>
      ))}
    </ul>
  );
}
