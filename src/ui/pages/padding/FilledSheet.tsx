import { upperFirst } from "../../../text/upperFirst";
import { useState } from "react";
import { type SheetMoment, sheetDraftKey } from "../../../app/session/commands";
import { readingName } from "../../../app/progress/padProgress";
import { openTrial } from "../../../app/print/openTrial";
import { pinnedPieces } from "../../../app/steps/route";
import { type SheetReadingTexts, sheetEntries } from "../../../app/steps/sheetEntries";
import { parseLength } from "../../../core/lengthText";
import { isStructure } from "../../../core/padding/piece";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { filledSheetWords } from "../../../text/filledSheet";
import { tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { planWords } from "../../../text/plan";
import { DraftLength } from "../../kit/field/DraftLength";
import { type LayersOfPieces, PiecesOnSheet } from "./PiecesOnSheet";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useDrafts, useFitting, useLengths } from "../../kit/useStore";

const moments = ["structure", "end", "cover"] as const;
const ofTrial = ["bare", "strip"] as const;
const parts = ["girth", "frontArc"] as const;

/** A padding sheet that was filled in on paper, taken in on one screen: what was pinned, of how many layers, and what the tape read. */
export function FilledSheet({ plan }: { readonly plan: Plan }) {
  const fitting = useFitting();
  const { unit, step } = useLengths();
  const drafts = useDrafts().other;
  const doAndSay = useDoAndSay();
  const on = pinnedPieces(fitting.work);
  const left = plan.pieces.filter(({ id }) => !on.has(id));
  const [layers, setLayers] = useState<LayersOfPieces>({});
  const [isBasted, setBasted] = useState(false);
  const layersOf = (piece: PlannedPiece) => layers[piece.id] ?? 0;
  const typed = (moment: SheetMoment) =>
    plan.levels.flatMap(({ name }) =>
      parts.flatMap((part) => {
        const reading = readingName(name, part);
        const text = drafts[sheetDraftKey(moment, reading)]?.trim() ?? "";
        return text === "" ? [] : [[reading, text] as const];
      }),
    );
  const [bare, strip] = ofTrial.map((moment) => drafts[sheetDraftKey(moment, "waistGirth")]?.trim() ?? "");
  const trial =
    bare === undefined || strip === undefined || bare + strip === "" ? null : { before: bare, after: strip };
  const all = moments.flatMap(typed);
  const texts = [...all.map(([, text]) => text), ...(trial === null ? [] : [trial.before, trial.after])];
  const isClear = texts.every((text) => parseLength(text, unit).ok);
  const ticked = left.filter((piece) => layersOf(piece) > 0);
  const take = () => {
    const readings = (moment: SheetMoment): SheetReadingTexts => Object.fromEntries(typed(moment));
    const sheet = {
      trial,
      structure: ticked.filter(isStructure).map((piece) => ({ piece, layers: layersOf(piece) })),
      overStructure: readings("structure"),
      tuning: ticked.filter((piece) => !isStructure(piece)),
      inTheEnd: readings("end"),
      isBasted,
      overCover: readings("cover"),
    };
    const entries = sheetEntries(sheet, { plan, fitting, words: planWords(step) }, new Date().toISOString());
    doAndSay({ does: "recordAll", entries }, filledSheetWords.taken(ticked.length, texts.length));
    setLayers({});
    setBasted(false);
  };
  return (
    <>
      <p>{filledSheetWords.lead}</p>
      {openTrial(plan, fitting.work) ? <TrialFields /> : null}
      <PiecesOnSheet pieces={left} layers={layers} onLayers={(id, count) => setLayers({ ...layers, [id]: count })} />
      <SheetFields plan={plan} moment="structure" />
      <SheetFields plan={plan} moment="end" />
      <label className="tick">
        <input type="checkbox" checked={isBasted} onChange={({ target }) => setBasted(target.checked)} />
        <span>{filledSheetWords.basted}</span>
      </label>
      <SheetFields plan={plan} moment="cover" />
      {isClear ? null : <p role="status">{filledSheetWords.unclear}</p>}
      <button type="button" className="patch" disabled={!isClear || ticked.length + texts.length === 0} onClick={take}>
        {filledSheetWords.take}
      </button>
    </>
  );
}

/** What the trial read: the bare waist, and the waist over its strip. */
const TrialFields = () => (
  <fieldset>
    <legend>{filledSheetWords.trial}</legend>
    <div className="sheet-columns">
      {ofTrial.map((moment) => (
        <DraftLength
          key={moment}
          draftKey={sheetDraftKey(moment, "waistGirth")}
          label={filledSheetWords.ofTrial[moment]}
        />
      ))}
    </div>
  </fieldset>
);

/** Girth and front of every level, as the sheet has room for them. */
function SheetFields({ plan, moment }: { readonly plan: Plan; readonly moment: (typeof moments)[number] }) {
  const name = filledSheetWords.moments[moment];
  return (
    <fieldset>
      <legend>{name}</legend>
      <div className="sheet-columns">
        {plan.levels.flatMap((level) =>
          parts.map((part) => (
            <DraftLength
              key={`${level.name}${part}`}
              draftKey={sheetDraftKey(moment, readingName(level.name, part))}
              label={upperFirst(`${levelWords[level.name]}, ${tapePartNames[part]}`)}
            />
          )),
        )}
      </div>
    </fieldset>
  );
}
