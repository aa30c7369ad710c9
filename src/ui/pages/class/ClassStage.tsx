import { useMemo } from "react";
import { partOfStep } from "../../../app/steps/jobPart";
import { tapeStep } from "../../../core/lengthText";
import type { PlannedPiece } from "../../../core/plan/plan";
import { cutSize, featherWords, layerCount } from "../../../text/pieces";
import { pieceName, planWords } from "../../../text/plan";
import { unbroken } from "../../../text/shownLength";
import { capital, classWords } from "../../../text/classView";
import { Drawing } from "../../drawing/Drawing";
import { cutSketch } from "../../drawing/cutSketch";
import { figureScene } from "../../drawing/figureScene";
import type { FigureView } from "../../drawing/figureView";
import { lengthWriter } from "../../../text/lengthWriter";
import { ClassFigures } from "./ClassFigures";
import { ClassLines } from "./ClassLines";
import { classScene } from "./classScene";
import type { ClassView } from "../../../app/classView/classView";

/** The middle of the class view: where the hands are now, and what they need to know. */
export function ClassStage({ view }: { readonly view: ClassView }) {
  if (partOfStep[view.step.do] !== "padding" && view.step.do !== "read-cover")
    return <ClassForm view={view} piece={null} />;
  switch (view.step.do) {
    case "prepare-form":
    case "mark-lines":
    case "read-lines":
      return <ClassLines view={view} />;
    case "cut":
    case "stack":
    case "pin":
    case "tune":
      return view.step.piece === null ? (
        <ClassForm view={view} piece={null} />
      ) : (
        <PieceAtHand view={view} piece={view.step.piece} />
      );
    case "baste":
    case "carry-lines":
    case "look":
      return <ClassForm view={view} piece={null} />;
    default:
      return (
        <>
          <ClassSection view={view} />
          <ClassFigures view={view} />
        </>
      );
  }
}

function PieceAtHand({ view, piece }: { readonly view: ClassView; readonly piece: PlannedPiece }) {
  const { plan, unit, isCovered } = view;
  const step = tapeStep[unit];
  const largest = piece.cut.at(-1);
  const { facts } = classWords;
  const rows: readonly (readonly [string, string])[] = [
    [facts.layers, capital(layerCount(piece.layers.length))],
    ...(isCovered || largest === undefined
      ? []
      : ([
          [facts.cut, capital(cutSize(largest, step))],
          [facts.place, capital(unbroken(planWords(step).piecePlace(piece, plan.levels)))],
        ] as const)),
    ...(isCovered ? [] : ([[facts.edge, capital(featherWords(piece.layers.at(-1)?.feather ?? 0, step))]] as const)),
  ];
  return (
    <>
      <ClassForm view={view} piece={piece} />
      <section className="class-piece" aria-label={pieceName(piece)}>
        <div className="class-cut">
          <Drawing scene={cutSketch(piece, pieceName(piece))} hidden />
        </div>
        <dl className="class-facts">
          {rows.map(([name, words]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      </section>
    </>
  );
}

/** The form as it stands, with the piece at hand where it goes; it bears no length while the figures are covered. */
function ClassForm({
  view: { plan, pinned, unit },
  piece,
}: {
  readonly view: ClassView;
  readonly piece: PlannedPiece | null;
}) {
  const scenes = useMemo(() => {
    const picture = {
      levels: plan.levels,
      pieces: plan.pieces,
      lengths: lengthWriter(unit),
      shownOn: "paper",
    } as const;
    // With every piece on, none is at hand.
    const now = piece === null && pinned === plan.pieces.length ? {} : { now: piece?.order ?? pinned };
    const views: readonly FigureView[] = piece === null ? ["front", "side", "back"] : [viewOf(piece)];
    return views.map((view) => {
      const scene = figureScene({ ...picture, view, ...now });
      return { ...scene, labels: scene.labels.filter(({ text }) => !/\d\s?(?:in|cm|mm)$/u.test(text)) };
    });
  }, [plan, pinned, unit, piece]);
  return (
    <section className={piece === null ? "class-form class-form-whole" : "class-form"} aria-label={classWords.form}>
      {scenes.map((scene) => (
        <Drawing key={scene.title} scene={scene} />
      ))}
    </section>
  );
}

function viewOf({ zone }: PlannedPiece): FigureView {
  if (/back/i.test(zone)) return "back";
  return zone === "leftSide" || zone === "rightSide" ? "side" : "front";
}

/** The section at the level, filling up. It is drawn anew at each step, so that the new piece can come in. */
function ClassSection({ view: { plan, level, pinned: step } }: { readonly view: ClassView }) {
  const scene = useMemo(() => classScene({ level, pieces: plan.pieces, step }), [plan, level, step]);
  return (
    <section className="class-section" aria-label={classWords.picture}>
      <div className="class-picture" key={`${level.name}${String(step)}`}>
        <Drawing scene={scene} />
      </div>
    </section>
  );
}
