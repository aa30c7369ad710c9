import { type PointerEvent, useId, useRef, useState } from "react";
import { calibrated, isThrow } from "../../../../app/patterns/projection";
import { mm } from "../../../../core/units";
import { barReading, barWords, projectionWords } from "../../../../text/projection";
import { useAnnounce } from "../../../kit/Announcer";
import { useLengths } from "../../../kit/useStore";
import type { ThrowScale } from "./useThrowScale";

interface BarProps {
  readonly scale: ThrowScale;
  readonly lengthMm: number;
  readonly onDragging: (isDragging: boolean) => void;
}

/** The bar that the tape is laid on, at the scale of the part; its right end is dragged, or what it reads is typed. */
export function ProjectionBar({ scale: { mmPerPixel, change }, lengthMm, onDragging }: BarProps) {
  const { unit, step } = useLengths();
  const id = useId();
  const announce = useAnnounce();
  const bar = useRef<SVGSVGElement>(null);
  const [isHeld, setHeld] = useState(false);
  const [typed, setTyped] = useState("");
  const [refused, setRefused] = useState<string | null>(null);
  const pixels = lengthMm / mmPerPixel;
  const hold = (held: boolean) => {
    setHeld(held);
    onDragging(held);
  };
  const drag = (event: PointerEvent<SVGSVGElement>) => {
    const left = bar.current?.getBoundingClientRect().left ?? 0;
    const length = event.clientX - left - barEdge;
    if (isHeld && length > shortestDragged) change(lengthMm / length);
  };
  const set = () => {
    const read = barReading(typed, unit);
    const next = read === null ? null : calibrated(mmPerPixel, lengthMm, read);
    if (next === null || !isThrow(next)) {
      const sentence = projectionWords.notLength(typed, barWords(mm(lengthMm), step));
      setRefused(sentence);
      announce(sentence);
      return;
    }
    change(next);
    setTyped("");
    setRefused(null);
  };
  return (
    <div className="projection-bar">
      <svg
        ref={bar}
        width={pixels + 2 * barEdge + 20}
        height={64}
        role="img"
        aria-label={barWords(mm(lengthMm), step)}
        onPointerMove={drag}
        onPointerUp={() => hold(false)}
        onPointerCancel={() => hold(false)}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          hold(true);
        }}
      >
        <path className="projection-bar-body" d={`M${barEdge} 14h${pixels}v34h${-pixels}Z`} />
        <path className="projection-bar-ends" d={`M${barEdge} 0v62M${barEdge + pixels} 0v62`} />
        <path className="projection-bar-ticks" d={ticks(lengthMm, mmPerPixel, unit === "in" ? 25.4 : 10)} />
      </svg>
      <div className="projection-bar-words">
        <p>
          <strong>{projectionWords.lay(barWords(mm(lengthMm), step))}</strong>
        </p>
        <p>{projectionWords.layHow}</p>
        <form
          className="projection-reads"
          onSubmit={(event) => {
            event.preventDefault();
            set();
          }}
        >
          <label htmlFor={id}>{projectionWords.reads}</label>
          <input
            id={id}
            type="text"
            autoComplete="off"
            maxLength={20}
            value={typed}
            aria-invalid={refused !== null}
            onChange={({ target }) => setTyped(target.value)}
          />
          <button type="submit">{projectionWords.setReading}</button>
        </form>
        {refused === null ? null : <p role="status">{refused}</p>}
      </div>
    </div>
  );
}

/** Room for the end mark (px), and the shortest bar that a drag leaves. */
const barEdge = 4;
const shortestDragged = 40;

/** A tick at every inch or centimeter, as far as they stay apart. */
function ticks(lengthMm: number, mmPerPixel: number, every: number): string {
  const count = Math.round(lengthMm / every);
  return Array.from({ length: count - 1 }, (_, i) => `M${barEdge + ((i + 1) * every) / mmPerPixel} 14v18`).join("");
}
