import { upperFirst } from "../../../text/upperFirst";
import { useMemo } from "react";
import type { ClassView } from "../../../app/classView/classView";
import { fineStep, tapeStep } from "../../../core/lengthText";
import type { Darts } from "../../../core/padding/layerCut";
import type { PlannedPiece } from "../../../core/plan/plan";
import { classWords } from "../../../text/classView";
import { lengthWriter } from "../../../text/lengthWriter";
import { cutSize, featherWords, layerCount } from "../../../text/pieces";
import { pieceName } from "../../../text/plan";
import { shownLength, unbroken } from "../../../text/shownLength";
import { handSteps } from "../../../text/stops";
import { Drawing } from "../../drawing/Drawing";
import { cutSketch } from "../../drawing/cutSketch";
import { layerPictures, pieceScene } from "../../drawing/pieceScene";

interface PieceProps {
  readonly view: ClassView;
  readonly piece: PlannedPiece;
}

const { facts } = classWords;

/** The outermost layer as it is cut, with its widths and darts, and beside it every layer's own size; covered, its shape alone. */
export function ClassCut({ view, piece }: PieceProps) {
  const { unit, isCovered } = view;
  const name = pieceName(piece);
  const scene = useMemo(() => {
    if (isCovered) return cutSketch(piece, name);
    const largest = layerPictures(piece, name, lengthWriter(unit), "brief").at(-1);
    return largest === undefined ? cutSketch(piece, name) : pieceScene(largest);
  }, [piece, name, unit, isCovered]);
  return (
    <section className="class-piece" aria-label={name}>
      <div className="class-cut">
        <Drawing scene={scene} />
      </div>
      {isCovered ? (
        <Facts rows={[layersRow(piece), ...dartRows(piece), edgeRow(view, piece)]} />
      ) : (
        <LayerTable view={view} piece={piece} />
      )}
    </section>
  );
}

/** Every layer in its own size, the outermost last, with the darts of each. */
function LayerTable({ view: { unit }, piece }: PieceProps) {
  const step = tapeStep[unit];
  const last = piece.cut.length;
  return (
    <dl className="class-facts class-layers">
      {piece.cut.map((cut, i) => (
        // Layers stay where they are, and two may be cut alike.
        // biome-ignore lint/suspicious/noArrayIndexKey: as above
        <div key={i}>
          <dt>{last === 1 ? facts.onlyLayer : facts.layer(i + 1, i + 1 === last)}</dt>
          <dd>{unbroken(cutSize(cut, step))}</dd>
          {"darts" in cut && cut.darts.length > 0 ? (
            <dd className="class-darts">{unbroken(dartWords(cut.darts, unit))}</dd>
          ) : null}
        </div>
      ))}
    </dl>
  );
}

function dartWords(darts: readonly Darts[], unit: ClassView["unit"]): string {
  const write = (length: Darts["width"]) => shownLength(length, fineStep[unit]);
  const [first] = darts;
  return facts.dartsAt(
    first !== undefined && darts.every(({ count }) => count === first.count) ? first.count : null,
    darts.map(({ from, count, width, depth }) => ({ from, count, size: facts.dartSize(write(width), write(depth)) })),
  );
}

/** How many darts there are is no length. */
const dartRows = ({ cut }: PlannedPiece): readonly Row[] => {
  const most = Math.max(
    0,
    ...cut.map((one) => ("darts" in one ? Math.max(0, ...one.darts.map(({ count }) => count)) : 0)),
  );
  return most === 0 ? [] : [[facts.darts, facts.dartCount(most)]];
};

/** The layers one on the other, as they lie on the table, and what the hands do. */
export const ClassStack = ({ view, piece }: PieceProps) => (
  <section className="class-piece" aria-label={pieceName(piece)}>
    <div className="class-cut">
      <Drawing scene={cutSketch(piece, pieceName(piece))} hidden />
    </div>
    <Facts rows={[layersRow(piece), ...handRows(view, piece)]} />
  </section>
);

/** How it is pinned; where it goes is said above, and shown beside it. */
export const ClassPin = ({ view, piece }: PieceProps) => (
  <section className="class-piece class-piece-pin" aria-label={pieceName(piece)}>
    <Facts rows={[layersRow(piece), ...handRows(view, piece)]} />
  </section>
);

type Row = readonly [name: string, words: string];

const layersRow = (piece: PlannedPiece): Row => [facts.layers, upperFirst(layerCount(piece.layers.length))];

const edgeRow = (view: ClassView, piece: PlannedPiece): Row => [facts.edge, upperFirst(edgeOf(view, piece))];

/** How an edge is treated tells nothing of a body; how wide it is thinned may. */
function edgeOf({ isCovered, unit }: ClassView, piece: PlannedPiece): string {
  const feather = piece.layers.at(-1)?.feather ?? 0;
  return isCovered && feather !== 0 ? facts.featherCovered : featherWords(feather, tapeStep[unit]);
}

const handRows = (view: ClassView, piece: PlannedPiece): readonly Row[] =>
  handSteps(view.step, `${upperFirst(edgeOf(view, piece))}.`, view.facts).map(({ title, text }) => [title, text]);

const Facts = ({ rows }: { readonly rows: readonly Row[] }) => (
  <dl className="class-facts">
    {rows.map(([name, words]) => (
      <div key={name}>
        <dt>{name}</dt>
        <dd>{words}</dd>
      </div>
    ))}
  </dl>
);
