import { useEffect, useMemo, useRef, useState } from "react";
import { type ThrownPart, thrownPart, turnThatFits } from "../../../../app/patterns/projection";
import { seamNames } from "../../../../app/patterns/seamNames";
import type { TitledPart } from "../../../../app/patterns/titledPart";
import type { LengthUnit } from "../../../../core/lengthText";
import { mm } from "../../../../core/units";
import { barWords, projectionWords } from "../../../../text/projection";
import { useWakeLock } from "../../../kit/useScreen";
import { useLengths } from "../../../kit/useStore";
import { ProjectionBar } from "./ProjectionBar";
import { ProjectionPicture } from "./ProjectionPicture";
import { useProjectionKeys } from "./useProjectionKeys";
import { useRoom } from "./useRoom";
import { useThrowScale } from "./useThrowScale";
import "./projection.css";

interface ProjectionProps {
  readonly parts: readonly TitledPart[];
  readonly onClose: () => void;
}

/** What a projector throws onto the cutting table: one part at true size, white on black, and the bar it is measured by. */
export function ProjectionView({ parts, onClose }: ProjectionProps) {
  const dialog = useRef<HTMLDialogElement>(null);
  const stage = useRef<HTMLDivElement>(null);
  const { unit } = useLengths();
  const scale = useThrowScale();
  const { mmPerPixel, change } = scale;
  const [at, setAt] = useState(0);
  const [isMirrored, setMirrored] = useState(false);
  const [turned, setTurned] = useState(0);
  const [hasBar, setBar] = useState(true);
  const [heldBar, setHeldBar] = useState<number | null>(null);
  const room = useRoom(stage, hasBar);
  useWakeLock(true);
  const nextButton = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
    nextButton.current?.focus();
  }, []);

  const names = useMemo(() => seamNames(parts.map(({ part }) => part)), [parts]);
  const titled = parts[at] as TitledPart;
  const { turn, fits } = useMemo(() => turnThatFits(titled.part, mmPerPixel, room), [titled, mmPerPixel, room]);
  const thrown = useMemo(
    () => thrownPart(titled.part, { mmPerPixel, turn: turn + turned, isMirrored }, names),
    [titled, mmPerPixel, turn, turned, isMirrored, names],
  );
  const barMm = heldBar ?? barLength(unit, mmPerPixel, room.width);
  const step16 = unit === "in" ? 25.4 / 16 : 1;
  const act = {
    next: () => setAt((now) => Math.min(parts.length - 1, now + 1)),
    previous: () => setAt((now) => Math.max(0, now - 1)),
    mirror: () => setMirrored((now) => !now),
    turn: () => setTurned((now) => (now + 90) % 360),
    bar: () => setBar((now) => !now),
    larger: () => change((mmPerPixel * barMm) / (barMm + step16)),
    smaller: () => change((mmPerPixel * barMm) / (barMm - step16)),
  };
  useProjectionKeys(act);
  return (
    <dialog ref={dialog} className="projection" aria-label={projectionWords.title} onClose={onClose}>
      <header className="projection-head">
        <h2>{titled.title}</h2>
        <p aria-live="polite">
          {projectionWords.partOf(at + 1, parts.length)} {titled.says[0]}{" "}
          {titled.part.kind === "batting" ? projectionWords.linesOf.sewn : projectionWords.linesOf.cut}{" "}
          {thrown.seams.length > 0 ? `${projectionWords.seams} ` : ""}
          {isMirrored ? projectionWords.mirrored : ""}
        </p>
        <PartSize thrown={thrown} mmPerPixel={mmPerPixel} />
        {fits || room.width === 0 ? null : <p>{projectionWords.tooLarge}</p>}
      </header>
      <div ref={stage} className="projection-stage" data-mm-per-pixel={mmPerPixel}>
        {room.width === 0 ? null : (
          <ProjectionPicture
            key={`${at} ${turned}`}
            part={thrown}
            title={titled.title}
            clear={widestAllowance / mmPerPixel}
            room={room}
          />
        )}
      </div>
      {hasBar ? (
        <ProjectionBar
          scale={scale}
          lengthMm={barMm}
          onDragging={(isDragging) => setHeldBar(isDragging ? barMm : null)}
        />
      ) : null}
      <footer className="projection-controls">
        <Control name={projectionWords.smaller} mark="−" onPress={act.smaller} />
        <Control name={projectionWords.larger} mark="+" onPress={act.larger} />
        <Control name={projectionWords.mirror} mark="M" onPress={act.mirror} />
        <Control name={projectionWords.turn} mark="T" onPress={act.turn} />
        <Control name={hasBar ? projectionWords.hideBar : projectionWords.showBar} mark="B" onPress={act.bar} />
        <Control name={projectionWords.previous} mark="←" onPress={act.previous} />
        <Control name={projectionWords.close} mark="Esc" onPress={() => dialog.current?.close()} />
        <button
          ref={nextButton}
          type="button"
          className="projection-next"
          onClick={act.next}
          disabled={at === parts.length - 1}
        >
          {projectionWords.next} <span aria-hidden>→</span>
        </button>
      </footer>
    </dialog>
  );
}

function PartSize({ thrown, mmPerPixel }: { readonly thrown: ThrownPart; readonly mmPerPixel: number }) {
  const { step } = useLengths();
  const size = (pixels: number) => barWords(mm(pixels * mmPerPixel), step);
  return <p>{projectionWords.measures(size(thrown.width), size(thrown.height))}</p>;
}

interface ControlProps {
  readonly name: string;
  /** The key that does the same. */
  readonly mark: string;
  readonly onPress: () => void;
}

const Control = ({ name, mark, onPress }: ControlProps) => (
  // A pointer leaves the focus where it is, so that the space bar goes on meaning the next part.
  <button type="button" onMouseDown={(event) => event.preventDefault()} onClick={onPress}>
    {name} <kbd aria-hidden>{mark}</kbd>
  </button>
);

/** No seam is cut wider, and a little more for the line itself (mm). */
const widestAllowance = 30;

/** The longest bar of these that takes no more than this share of the width: the longer, the truer. */
const barLengths = {
  in: [20, 10, 6, 4, 2, 1].map((length) => length * 25.4),
  cm: [500, 250, 150, 100, 50, 20],
} as const;
const barShare = 0.55;

function barLength(unit: LengthUnit, mmPerPixel: number, width: number): number {
  const lengths = barLengths[unit === "in" ? "in" : "cm"];
  return lengths.find((length) => length / mmPerPixel <= barShare * width) ?? (lengths.at(-1) as number);
}
