import { useMemo } from "react";
import { partOfStep } from "../../../app/steps/jobPart";
import type { PlannedPiece } from "../../../core/plan/plan";
import { classWords } from "../../../text/classView";
import { Drawing } from "../../drawing/Drawing";
import { formScene } from "./formScene";
import { hasPicture } from "../../kit/plan/makingPictures";
import type { FigureView } from "../../drawing/figureView";
import { ClassFigures } from "./ClassFigures";
import { ClassLines } from "./ClassLines";
import { ClassCut, ClassPin, ClassStack } from "./ClassPiece";
import { ClassMaking } from "./ClassMaking";
import { classScene } from "./classScene";
import type { ClassView } from "../../../app/classView/classView";

/** The middle of the class view: where the hands are now, and what they need to know. */
export function ClassStage({ view }: { readonly view: ClassView }) {
  if (partOfStep[view.step.do] !== "padding" && view.step.do !== "read-cover")
    return hasPicture(view.step.do) && !view.covers.person ? (
      <ClassMaking view={view} />
    ) : (
      <ClassForm view={view} piece={null} />
    );
  switch (view.step.do) {
    case "prepare-form":
    case "mark-lines":
    case "read-lines":
      return <ClassLines view={view} />;
    case "cut":
    case "stack":
    case "pin":
    case "tune":
      return <PieceAtHand view={view} />;
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

/** What is done with one piece: its cut drawing with every size, its layers on the table, or the form where it goes. */
function PieceAtHand({ view }: { readonly view: ClassView }) {
  const { piece, do: doing } = view.step;
  if (piece === null) return <ClassForm view={view} piece={null} />;
  if (doing === "cut") return <ClassCut view={view} piece={piece} />;
  if (doing === "stack") return <ClassStack view={view} piece={piece} />;
  return (
    <>
      <ClassForm view={view} piece={piece} />
      <ClassPin view={view} piece={piece} />
    </>
  );
}

/** The form as it stands, with the piece at hand where it goes; it bears no length, and covered no outline of the person. */
function ClassForm({
  view: { plan, pinned, unit, covers },
  piece,
}: {
  readonly view: ClassView;
  readonly piece: PlannedPiece | null;
}) {
  const isPersonCovered = covers.person;
  const scenes = useMemo(() => {
    // With every piece on, none is at hand.
    const now = piece === null && pinned === plan.pieces.length ? null : (piece?.order ?? pinned);
    const views: readonly FigureView[] = piece === null ? ["front", "side", "back"] : [viewOf(piece)];
    return views.map((view) => formScene({ plan, view, now, unit, isPersonCovered }));
  }, [plan, pinned, unit, piece, isPersonCovered]);
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
function ClassSection({ view: { plan, level, pinned: step, covers } }: { readonly view: ClassView }) {
  const isPersonCovered = covers.person;
  const scene = useMemo(
    () => classScene({ level, pieces: plan.pieces, step, isPersonCovered }),
    [plan, level, step, isPersonCovered],
  );
  return (
    <section className="class-section" aria-label={classWords.picture}>
      <div className="class-picture" key={`${level.name}${String(step)}`}>
        <Drawing scene={scene} />
      </div>
    </section>
  );
}
