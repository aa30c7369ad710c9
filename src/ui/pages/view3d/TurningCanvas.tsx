import { useEffect, useMemo, useRef, useState } from "react";
import { type TurningColours, turningColours } from "./turningColours";
import type { TurningView } from "./turningSurface";
import { paintFigure, surfaceSheet, type TurningPicture } from "./turningPaint";

/** The figure on a canvas as large as its place, sharp on any screen, painted anew when the colours of the page change. */
export function TurningCanvas({ model, view, count, now, body }: Omit<TurningPicture, "isMoving">) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  const scheme = useColourChanges();

  useEffect(() => {
    const element = canvas.current;
    if (element === null) return undefined;
    const measure = () => setSize({ width: element.clientWidth, height: element.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);

  const lastView = useRef<TurningView>(view);
  const surface = useMemo(() => (size.width === 0 ? null : surfaceSheet(size)), [size]);
  const colours = useRef<{ readonly scheme: number; readonly are: TurningColours } | null>(null);

  useEffect(() => {
    const element = canvas.current;
    const context = element?.getContext("2d") ?? null;
    if (element === null || context === null || surface === null) return undefined;
    const paint = (isMoving: boolean) => {
      const sharpness = Math.min(3, window.devicePixelRatio || 1);
      const [width, height] = [Math.round(size.width * sharpness), Math.round(size.height * sharpness)];
      if (element.width !== width || element.height !== height) {
        element.width = width;
        element.height = height;
      }
      context.setTransform(sharpness, 0, 0, sharpness, 0, 0);
      if (colours.current?.scheme !== scheme) colours.current = { scheme, are: turningColours(element, context) };
      paintFigure(context, { model, view, count, now, body, isMoving }, colours.current.are, size, surface);
    };
    // Only the look from elsewhere is a move; the rest is seen best at once.
    const isTurned = lastView.current !== view;
    lastView.current = view;
    const frame = requestAnimationFrame(() => paint(isTurned));
    const rest = isTurned ? window.setTimeout(() => paint(false), restMs) : undefined;
    return () => {
      cancelAnimationFrame(frame);
      window.clearTimeout(rest);
    };
  }, [model, view, count, now, body, size, surface, scheme]);

  return <canvas className="turning-canvas" ref={canvas} aria-hidden />;
}

/** Once it has stood so long it is painted as fine as it is (ms). */
const restMs = 120;

/** Counts changes of light and dark, of contrast and of forced colours. */
function useColourChanges(): number {
  const [count, setCount] = useState(0);
  useEffect(() => {
    const lists = colourQueries.map((query) => window.matchMedia(query));
    const changed = () => setCount((before) => before + 1);
    for (const list of lists) list.addEventListener("change", changed);
    return () => {
      for (const list of lists) list.removeEventListener("change", changed);
    };
  }, []);
  return count;
}

const colourQueries = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "(forced-colors: active)"];
