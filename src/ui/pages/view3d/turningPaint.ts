import { levelWords } from "../../../text/pictures";
import { facingRuns, pieceEdges } from "./pieceEdges";
import { mixed, type Rgb, rgbText, shaded, type TurningColours } from "./turningColours";
import { newRaster, paintSurface, type Raster } from "./turningRaster";
import { type Look, lookFrom, type SeenPoint, seenRing, type StandingRing, type TurningView } from "./turningSurface";
import { crownTop, type TurningModel } from "./turningModel";

/** One picture of the figure: from where, how many pieces on, with or without the body round it. */
export interface TurningPicture {
  readonly model: TurningModel;
  readonly view: TurningView;
  readonly count: number;
  /** The piece at hand, by its order; null while none is. */
  readonly now: number | null;
  readonly body: "shown" | "hidden";
  /** While it turns every other ring and point are enough. */
  readonly isMoving: boolean;
}

interface Sheet {
  readonly context: CanvasRenderingContext2D;
  readonly colours: TurningColours;
  readonly look: Look;
  readonly scale: number;
  readonly textPixels: number;
}

/** Paints the figure into the middle of a canvas of this size (CSS pixels), furthest parts first. */
export function paintFigure(
  context: CanvasRenderingContext2D,
  picture: TurningPicture,
  colours: TurningColours,
  size: { readonly width: number; readonly height: number },
  surface: SurfaceSheet,
): void {
  const { model, view, count, now, body, isMoving } = picture;
  const textPixels = Math.max(13, Math.min(26, size.width / 34));
  const words = textPixels * wordsAcross;
  const scale = Math.min(
    (size.width - words) / (2 * model.reach + edgeRoom),
    size.height / (model.bottom - crownTop + 2 * edgeRoom),
  );
  const look = lookFrom(view);
  const middle = look(0, 0, (crownTop + model.bottom) / 2);
  const sheet: Sheet = { context, colours, look, scale, textPixels };
  const rings = model.standingWith(count);
  const drawn = isMoving ? thinned([...model.crown, ...rings]) : [...model.crown, ...rings];
  context.clearRect(0, 0, size.width, size.height);
  context.save();
  context.translate((size.width - words) / 2, size.height / 2 - middle.down * scale);
  context.scale(scale, scale);
  context.lineJoin = "round";
  context.lineCap = "round";
  paintPole(sheet, rings.at(-1));
  if (body === "shown") paintShell(sheet, model, "behind");
  paintFaces(sheet, drawn, surface, { now, every: isMoving ? 2 : 1 });
  line(sheet, sideEdges(drawn, look), rgbText(colours.line), 1.5);
  paintCap(sheet, model.crown[0]);
  paintEdges(sheet, model, rings, picture);
  paintLevels(sheet, model, rings);
  if (body === "shown") paintShell(sheet, model, "before");
  paintWords(sheet, model, rings);
  context.restore();
}

/** Room round the figure (mm), and beside it for the names of the levels (in their own size). */
const edgeRoom = 62;
const wordsAcross = 5.4;

function trace(context: CanvasRenderingContext2D, points: readonly SeenPoint[]): void {
  points.forEach(({ across, down }, i) => {
    if (i === 0) context.moveTo(across, down);
    else context.lineTo(across, down);
  });
}

function line(
  { context, scale }: Sheet,
  runs: readonly (readonly SeenPoint[])[],
  colour: string,
  pixels: number,
  dash: readonly number[] = [],
): void {
  context.beginPath();
  for (const run of runs) trace(context, run);
  context.strokeStyle = colour;
  context.lineWidth = pixels / scale;
  context.setLineDash(dash.map((length) => length / scale));
  context.stroke();
  context.setLineDash([]);
}

function paintPole(sheet: Sheet, foot: StandingRing | undefined): void {
  if (foot === undefined) return;
  const { context, colours, look } = sheet;
  const depth = foot.section.depthBelowNape;
  const [top, end] = [look(0, 0, depth), look(0, 0, depth + edgeRoom)];
  context.fillStyle = rgbText(shaded(colours.form, 0.35, colours.shading));
  context.fillRect(top.across - 10, top.down, 20, end.down - top.down);
  line(
    sheet,
    [
      [
        { ...top, across: -10 },
        { ...end, across: -10 },
      ],
      [
        { ...top, across: 10 },
        { ...end, across: 10 },
      ],
    ],
    rgbText(colours.line),
    1.25,
  );
  // The lower edge is open: what is seen of it from above or below is the dark inside.
  context.beginPath();
  trace(context, seenRing(foot, look));
  context.closePath();
  context.fillStyle = rgbText(shaded(colours.form, 0.2, colours.shading));
  context.fill();
}

function paintCap(sheet: Sheet, neck: StandingRing | undefined): void {
  if (neck === undefined || sheet.look(0, 0, 0).near >= sheet.look(0, 0, -1).near) return;
  const { context, colours } = sheet;
  const ring = seenRing(neck, sheet.look);
  context.beginPath();
  trace(context, ring);
  context.closePath();
  context.fillStyle = rgbText(shaded(colours.form, 0.95, colours.shading));
  context.fill();
  line(sheet, [[...ring, ...ring.slice(0, 1)]], rgbText(colours.line), 1.25);
}

/** The surface of form and pieces, one picture element for a pixel of the page: lines on it are as sharp as the screen. */
function paintFaces(
  { context, colours, look }: Sheet,
  rings: readonly StandingRing[],
  { raster, ground, image }: SurfaceSheet,
  { now, every }: { readonly now: number | null; readonly every: number },
): void {
  const { canvas } = context;
  const { a: scale, e: left, f: top } = context.getTransform();
  const share = ground.canvas.width / canvas.width;
  paintSurface(raster, rings, {
    look,
    place: { scale: scale * share, left: left * share, top: top * share },
    material: (ring, at) => materialOf(ring, at, colours, now),
    shading: colours.shading,
    every,
  });
  ground.putImageData(image, 0, 0);
  context.save();
  context.resetTransform();
  context.drawImage(ground.canvas, 0, 0, canvas.width, canvas.height);
  context.restore();
}

/** Every other ring, with the first and the last. */
const thinned = (rings: readonly StandingRing[]): readonly StandingRing[] =>
  rings.filter((_, i) => i % 2 === 0 || i === rings.length - 1);

/** What the surface is painted on before it goes onto the canvas of the page. */
export interface SurfaceSheet {
  readonly raster: Raster;
  readonly ground: CanvasRenderingContext2D;
  /** The same picture elements, as a canvas takes them. */
  readonly image: ImageData;
}

export function surfaceSheet(size: { readonly width: number; readonly height: number }): SurfaceSheet | null {
  const raster = newRaster(size.width, size.height);
  const canvas = document.createElement("canvas");
  [canvas.width, canvas.height] = [raster.width, raster.height];
  const ground = canvas.getContext("2d");
  const image = new ImageData(new Uint8ClampedArray(raster.inks.buffer), raster.width, raster.height);
  return ground === null ? null : { raster, ground, image };
}

/** Two tints take turns, the piece at hand has its own, and where a piece is pulled thin what it lies on shows through. */
function materialOf(
  { outermost, own, beneath }: StandingRing,
  at: number,
  colours: TurningColours,
  now: number | null,
): Rgb {
  const tint = (order: number): Rgb =>
    order === 0 ? colours.form : order === now ? colours.now : order % 2 === 0 ? colours.layer : colours.layerOther;
  return mixed(tint(beneath[at] ?? 0), tint(outermost[at] ?? 0), Math.min(1, (own[at] ?? 0) / thinMm));
}

/** Batting pulled thinner than this lets what it lies on show through (mm). */
const thinMm = 1.5;

function paintEdges(
  sheet: Sheet,
  { pieces, bareAt }: TurningModel,
  rings: readonly StandingRing[],
  { count, now }: TurningPicture,
): void {
  for (const piece of pieces.slice(0, count)) {
    const isNow = piece.order === now;
    const colour = isNow ? rgbText(sheet.colours.ink) : rgbText(sheet.colours.line, 0.75);
    line(sheet, pieceEdges(piece, bareAt, rings, sheet.look), colour, isNow ? 2.25 : 1, isNow ? [] : [5, 4]);
  }
}

function paintLevels(sheet: Sheet, { levels }: TurningModel, rings: readonly StandingRing[]): void {
  for (const { depthBelowNape } of levels) {
    const ring = rings.find(({ section }) => section.depthBelowNape >= depthBelowNape.value);
    line(sheet, facingRuns(ring, sheet.look, depthBelowNape.value), rgbText(sheet.colours.line), 1.75);
  }
}

/**
 * The body as a shell: a veil over all of it, chalk rings round it, and its edges. What lies behind
 * the form is drawn first and fainter. At a level whose girth was guessed the ring is dashed.
 */
function paintShell(sheet: Sheet, { body, levels }: TurningModel, which: "behind" | "before"): void {
  const { context, colours, look } = sheet;
  if (which === "before") {
    const [left = [], right = []] = sideEdges(body, look);
    context.beginPath();
    trace(context, [...left, ...right.toReversed()]);
    context.closePath();
    context.fillStyle = rgbText(colours.body, 0.13);
    context.fill();
  }
  const opacity = which === "before" ? 0.95 : 0.4;
  // All rings of one kind are one stroke: each by itself takes a canvas as long as all of them.
  const drawn: { readonly [kind in ShellRing]: (readonly SeenPoint[])[] } = { measured: [], guessed: [], between: [] };
  for (const [i, ring] of body.entries()) {
    const depth = ring.section.depthBelowNape;
    const level = levels.find(({ depthBelowNape }) => depthBelowNape.value === depth);
    const isBorder = i === 0 || i === body.length - 1;
    if (level === undefined && !isBorder && i % 5 !== 0) continue;
    const runs = which === "before" ? facingRuns(ring, look, depth) : [wholeRing(ring, look)];
    const kind =
      level?.body.girth.kind === "estimated" ? "guessed" : level === undefined && !isBorder ? "between" : "measured";
    drawn[kind].push(...runs);
  }
  line(sheet, drawn.between, rgbText(colours.body, opacity * 0.4), 1);
  line(sheet, drawn.measured, rgbText(colours.body, opacity), 2);
  line(sheet, drawn.guessed, rgbText(colours.body, opacity), 2, [8, 6]);
  if (which === "before") line(sheet, sideEdges(body, look), rgbText(colours.body), 2.75);
}

type ShellRing = "measured" | "guessed" | "between";

const wholeRing = (ring: StandingRing, look: Look): readonly SeenPoint[] => {
  const points = seenRing(ring, look);
  return [...points, ...points.slice(0, 1)];
};

/** The furthest places to the left and right of each ring, joined down the figure. */
function sideEdges(rings: readonly StandingRing[], look: Look): readonly (readonly SeenPoint[])[] {
  const seen = rings.map((ring) => seenRing(ring, look));
  const furthest = (sign: 1 | -1): readonly SeenPoint[] =>
    seen.flatMap((ring) => {
      const [first, ...others] = ring;
      return first === undefined
        ? []
        : [others.reduce((best, point) => (point.across * sign > best.across * sign ? point : best), first)];
    });
  return [furthest(-1), furthest(1)];
}

function paintWords(sheet: Sheet, { levels, reach }: TurningModel, rings: readonly StandingRing[]): void {
  const { context, colours, look, scale, textPixels } = sheet;
  const size = textPixels / scale;
  context.font = `600 ${String(size)}px ${colours.faces.text}`;
  context.textBaseline = "middle";
  for (const { name, depthBelowNape } of levels) {
    const ring = rings.find(({ section }) => section.depthBelowNape >= depthBelowNape.value);
    if (ring === undefined) continue;
    const edge = seenRing(ring, look).reduce((best, point) => (point.across > best.across ? point : best));
    const start = reach + 14;
    line(
      sheet,
      [
        [
          { ...edge, across: edge.across + 6 },
          { ...edge, across: start - 6 },
        ],
      ],
      rgbText(colours.line),
      1,
      [2, 4],
    );
    context.fillStyle = rgbText(colours.ink);
    context.fillText(levelWords[name], start, edge.down);
  }
}
