import { memo, useMemo } from "react";
import { type LevelName, levelNames, type MeasurementName } from "../../../core/body/vocabulary";
import { type Piece, pieceExtent } from "../../../core/padding/piece";
import type { Plan } from "../../../core/plan/plan";
import { Drawing } from "../../drawing/Drawing";
import { coverScene } from "../../drawing/torso/coverScene";
import { viewOfPieces, type WorkPicture, workScene } from "../../drawing/torso/workScene";
import { measurementTexts } from "../../../text/measurements";
import { levelWords, pictureWords } from "../../../text/pictures";
import { phoneQuery, useMediaQuery } from "../useScreen";
import { useLengths } from "../useStore";
import type { StepAtHand } from "./useStep";

interface WorkPictureOfProps {
  readonly plan: Plan;
  readonly on: readonly Piece[];
  readonly now?: readonly Piece[];
  readonly doing: WorkPicture["doing"];
  readonly view?: WorkPicture["view"];
  readonly tape?: { readonly level: LevelName; readonly isHalf: boolean };
  readonly title: string;
}

/** The form as it stands at this step; on a phone the part at hand is seen close. */
export function WorkPictureOf({ plan, on, now = noPieces, doing, view, tape, title }: WorkPictureOfProps) {
  const { write } = useLengths();
  const isPhone = useMediaQuery(phoneQuery);
  const scene = useMemo(
    () =>
      workScene({
        levels: plan.levels,
        on: on.filter(({ id }) => !now.some((piece) => piece.id === id)),
        now,
        doing,
        view: view ?? viewOfPieces(now),
        ...(tape === undefined ? {} : { tape }),
        notes: doing === "pin" ? now.flatMap((piece) => edgeNotes(piece, write)) : [],
        names: levelWords,
        crop: cropOf(plan, now, tape, isPhone),
        textSize: isPhone || tape !== undefined ? 24 : 30,
        title,
        description: title,
      }),
    [plan, on, now, doing, view, tape, title, write, isPhone],
  );
  return <Drawing scene={scene} />;
}

/** The tape where one reading is taken; a letter typed beside it draws nothing anew. */
export const ReadingPicture = memo(function ReadingPicture({
  at: { step, plan, pinned },
  name,
}: {
  readonly at: StepAtHand;
  readonly name: MeasurementName;
}) {
  const title = measurementTexts[name].label;
  const level = levelNames.find((one) => name.startsWith(one)) ?? "waist";
  const tape = { level, isHalf: !name.endsWith("Girth") };
  if (step.do === "read-cover")
    return (
      <Drawing scene={coverScene({ levels: plan.levels, on: pinned, doing: "read", tape, title, isCovered: true })} />
    );
  const view = name.endsWith("BackArc") ? "back" : "front";
  return <WorkPictureOf plan={plan} on={pinned} doing="read" view={view} tape={tape} title={title} />;
});

const noPieces: readonly Piece[] = [];

/** How far its upper and lower edge lie from the nearest line. */
function edgeNotes(piece: Piece, write: (length: Piece["layers"][number]["thickness"]) => string) {
  const { top, bottom } = pieceExtent(piece);
  const cut = piece.cut.at(-1);
  if (cut === undefined || cut.shape === "disc" || cut.shape === "bought") return [];
  const note = ({ distance, side, level }: typeof cut.top) =>
    [write(distance), pictureWords.sideOf(side, level)] as const;
  return [
    { depth: top, lines: note(cut.top) },
    { depth: bottom, lines: note(cut.bottom) },
  ];
}

function cropOf(
  { levels }: Plan,
  now: readonly Piece[],
  tape: WorkPictureOfProps["tape"],
  isPhone: boolean,
): WorkPicture["crop"] {
  const line = tape === undefined ? undefined : levels.find(({ name }) => name === tape.level)?.depthBelowNape.value;
  if (line !== undefined) return { top: line - 110, bottom: line + 110 };
  if (!isPhone || now.length === 0) return null;
  const extents = now.map(pieceExtent);
  const [top, bottom] = [Math.min(...extents.map((one) => one.top)), Math.max(...extents.map((one) => one.bottom))];
  return { top: top - 60, bottom: Math.max(bottom + 60, top + 240) };
}
