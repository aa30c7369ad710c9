import { type PointerEvent, useRef, useState } from "react";
import type { Pixel, ThrownLine, ThrownPart } from "../../../../app/patterns/projection";
import { lineWords } from "../../../../text/pictures";
import { projectionWords } from "../../../../text/projection";

interface PictureProps {
  readonly part: ThrownPart;
  readonly title: string;
  readonly room: { readonly width: number; readonly height: number };
}

/** One part, each pixel of its paths a pixel of the picture. One that is larger than the picture is dragged. */
export function ProjectionPicture({ part, title, room }: PictureProps) {
  const [moved, setMoved] = useState<Pixel>({ x: 0, y: 0 });
  const from = useRef<Pixel | null>(null);
  const start = { x: (room.width - part.width) / 2 + moved.x, y: (room.height - part.height) / 2 + moved.y };
  const isSewn = part.lines.some(({ kind }) => kind === "cut");
  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    from.current = { x: event.clientX - moved.x, y: event.clientY - moved.y };
    event.currentTarget.setPointerCapture(event.pointerId);
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    if (from.current !== null) setMoved({ x: event.clientX - from.current.x, y: event.clientY - from.current.y });
  };
  const stop = () => {
    from.current = null;
  };
  return (
    <svg
      className="projection-picture"
      width={room.width}
      height={room.height}
      role="img"
      aria-label={title}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={stop}
      onPointerCancel={stop}
    >
      <g transform={`translate(${pixel(start.x)} ${pixel(start.y)})`}>
        {part.lines.map(({ kind, name, points, isClosed }, i) => (
          <path
            key={`${kind}${name}${String(i)}`}
            data-line={kind}
            className={`projection-${kind}${kind === "outline" && isSewn ? " projection-sewn" : ""}`}
            d={`M${points.map(({ x, y }) => `${pixel(x)} ${pixel(y)}`).join("L")}${isClosed ? "Z" : ""}`}
          />
        ))}
        {part.lines.flatMap((line, i) => words(line, i))}
      </g>
    </svg>
  );
}

/** Level lines and the grain say what they are, beside their middle. */
function words({ kind, name, points }: ThrownLine, i: number) {
  const text =
    kind === "level" && name in lineWords
      ? lineWords[name as keyof typeof lineWords]
      : kind === "grain"
        ? projectionWords.grain
        : null;
  if (text === null) return [];
  const middle = points[Math.floor(points.length / 2)] as Pixel;
  const other = points[0] as Pixel;
  const at = points.length === 2 ? { x: (middle.x + other.x) / 2, y: (middle.y + other.y) / 2 } : middle;
  return [
    <text key={`${name}${String(i)}`} x={pixel(at.x)} y={pixel(at.y - 10)} textAnchor="middle">
      {text}
    </text>,
  ];
}

/** To a hundredth: finer than any projector. */
const pixel = (value: number): number => Math.round(100 * value) / 100;
