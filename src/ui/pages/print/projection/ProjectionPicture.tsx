import { type PointerEvent, useRef, useState } from "react";
import { type Pixel, type ThrownLine, type ThrownPart, wordBeside } from "../../../../app/patterns/projection";
import { lineWords } from "../../../../text/pictures";
import { projectionWords } from "../../../../text/projection";

interface PictureProps {
  readonly part: ThrownPart;
  readonly title: string;
  /** How far outside its sewing line a part is cut at most (px). */
  readonly clear: number;
  readonly room: { readonly width: number; readonly height: number };
}

/** One part, each pixel of its paths a pixel of the picture. One that is larger than the picture is dragged. */
export function ProjectionPicture({ part, title, clear, room }: PictureProps) {
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
            d={`M${points.map(({ x, y }) => `${pixel(x)} ${pixel(y)}`).join("L")}${isClosed ? "Z" : ""}${kind === "grain" ? arrowheads(points) : ""}`}
          />
        ))}
        {part.lines.flatMap((line, i) => words(line, isSewn ? clear : wordGap, i))}
        {part.seams.map(({ name, at }, i) => (
          <text
            key={`seam${String(i)}`}
            data-seam={name}
            x={pixel(at.x)}
            y={pixel(at.y)}
            textAnchor="middle"
            dominantBaseline="central"
          >
            {name}
          </text>
        ))}
      </g>
    </svg>
  );
}

/** Level lines say what they are outside the part, at one end and the other in turn, so that short parts have room; the grain beside it. */
function words({ kind, name, points }: ThrownLine, clear: number, i: number) {
  if (kind === "grain") return [grainWord(points)];
  if (kind !== "level" || !(name in lineWords)) return [];
  const isFirst = i % 2 === 0;
  const [end, before] = (isFirst ? points.slice(0, 2) : points.slice(-2).toReversed()) as [Pixel, Pixel];
  const away = Math.hypot(end.x - before.x, end.y - before.y) || 1;
  const [x, y] = [(end.x - before.x) / away, (end.y - before.y) / away];
  const isAcross = Math.abs(x) > Math.abs(y);
  return [
    <text
      key={`${name}${String(i)}`}
      x={pixel(end.x + x * clear)}
      y={pixel(end.y + y * (isAcross ? clear : clear + wordGap))}
      textAnchor={isAcross ? (x > 0 ? "start" : "end") : "middle"}
      dominantBaseline="central"
    >
      {lineWords[name as keyof typeof lineWords]}
    </text>,
  ];
}

/** The word runs along the grain line, beside it, so that it crosses it at no scale; it can be read from below or from the right. */
function grainWord(points: readonly Pixel[]) {
  const { x, y, turn } = wordBeside(points);
  return (
    <text
      key="grain"
      textAnchor="middle"
      dominantBaseline="central"
      transform={`translate(${pixel(x)} ${pixel(y)}) rotate(${pixel(turn)})`}
    >
      {projectionWords.grain}
    </text>
  );
}

/** Between a line and its word (px). */
const wordGap = 12;

/** Arrowheads at both ends of the grain line (px). */
function arrowheads([from, to]: readonly Pixel[]): string {
  if (from === undefined || to === undefined) return "";
  const length = Math.hypot(to.x - from.x, to.y - from.y) || 1;
  const [x, y] = [(20 * (to.x - from.x)) / length, (20 * (to.y - from.y)) / length];
  const head = (tip: Pixel, way: 1 | -1) =>
    `M${pixel(tip.x - way * (x - y / 2))} ${pixel(tip.y - way * (y + x / 2))}L${pixel(tip.x)} ${pixel(tip.y)}L${pixel(tip.x - way * (x + y / 2))} ${pixel(tip.y - way * (y - x / 2))}`;
  return head(from, -1) + head(to, 1);
}

/** To a hundredth: finer than any projector. */
const pixel = (value: number): number => Math.round(100 * value) / 100;
