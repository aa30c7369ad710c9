import { useState } from "react";
import { type SheetMoment, sheetDraftKey } from "../../../app/session/commands";
import { readingName } from "../../../app/progress/padProgress";
import { pinnedPieces } from "../../../app/steps/route";
import { type SheetReadingTexts, sheetEntries } from "../../../app/steps/sheetEntries";
import { parseLength } from "../../../core/lengthText";
import { isStructure } from "../../../core/padding/piece";
import type { Plan, PlannedPiece } from "../../../core/plan/plan";
import { mostLayersAbove } from "../../../document/fittingLimits";
import { filledSheetWords } from "../../../text/filledSheet";
import { tapePartNames } from "../../../text/padding";
import { numberedName, upperFirst } from "../../../text/pieces";
import { levelWords } from "../../../text/pictures";
import { planWords } from "../../../text/plan";
import { DraftLength } from "../../kit/field/DraftLength";
import { useDoAndSay } from "../../kit/shelf/useDone";
import { useDrafts, useFitting, useLengths } from "../../kit/useStore";

const moments = ["structure", "end"] as const;
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
  const all = moments.flatMap(typed);
  const isClear = all.every(([, text]) => parseLength(text, unit).ok);
  const ticked = left.filter((piece) => layersOf(piece) > 0);
  const take = () => {
    const readings = (moment: SheetMoment): SheetReadingTexts => Object.fromEntries(typed(moment));
    const sheet = {
      structure: ticked.filter(isStructure).map((piece) => ({ piece, layers: layersOf(piece) })),
      overStructure: readings("structure"),
      tuning: ticked.filter((piece) => !isStructure(piece)),
      inTheEnd: readings("end"),
      isBasted,
    };
    const entries = sheetEntries(sheet, { plan, fitting, words: planWords(step) }, new Date().toISOString());
    doAndSay({ does: "recordAll", entries }, filledSheetWords.taken(ticked.length, all.length));
    setLayers({});
    setBasted(false);
  };
  return (
    <>
      <p>{filledSheetWords.lead}</p>
      <PiecesOnSheet pieces={left} layers={layers} onLayers={(id, count) => setLayers({ ...layers, [id]: count })} />
      {moments.map((moment) => (
        <SheetFields key={moment} plan={plan} moment={moment} />
      ))}
      <label className="tick">
        <input type="checkbox" checked={isBasted} onChange={({ target }) => setBasted(target.checked)} />
        <span>{filledSheetWords.basted}</span>
      </label>
      {isClear ? null : <p role="status">{filledSheetWords.unclear}</p>}
      <button type="button" className="patch" disabled={!isClear || ticked.length + all.length === 0} onClick={take}>
        {filledSheetWords.take}
      </button>
    </>
  );
}

/** How many layers each piece was cut of; none while it is not ticked. */
interface LayersOfPieces {
  readonly [id: string]: number;
}

interface PiecesOnSheetProps {
  readonly pieces: readonly PlannedPiece[];
  readonly layers: LayersOfPieces;
  readonly onLayers: (id: string, count: number) => void;
}

/** Every piece that is not pinned yet, with a box to tick and, of the structure, how many layers it was cut of. */
function PiecesOnSheet({ pieces, layers, onLayers }: PiecesOnSheetProps) {
  return (
    <fieldset>
      <legend>{filledSheetWords.pieces}</legend>
      {pieces.map((piece) => {
        const [name, count] = [numberedName(piece), layers[piece.id] ?? 0];
        return (
          <div key={piece.id} className="row">
            <label className="tick">
              <input
                type="checkbox"
                checked={count > 0}
                onChange={({ target }) => onLayers(piece.id, target.checked ? piece.layers.length : 0)}
              />
              <span>{upperFirst(name)}</span>
            </label>
            {isStructure(piece) && count > 0 ? (
              <span className="row">
                <input
                  className="line-input sheet-layers"
                  type="number"
                  min={1}
                  max={mostLayersAbove}
                  aria-label={filledSheetWords.layers(name)}
                  value={count}
                  onChange={({ target }) =>
                    onLayers(piece.id, Math.max(1, Math.min(mostLayersAbove, Math.round(Number(target.value)) || 1)))
                  }
                />
                <span aria-hidden="true">{filledSheetWords.layersUnit}</span>
              </span>
            ) : null}
          </div>
        );
      })}
    </fieldset>
  );
}

/** Girth and front of every level, as the sheet has room for them. */
function SheetFields({ plan, moment }: { readonly plan: Plan; readonly moment: SheetMoment }) {
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
