import { type FlatPoint, partFrame, partOutline } from "../../core/pattern/patternPart";
import { dashesOf, outlineDashes } from "./lineDashes";
import { foldedWords, type TitledPart } from "./titledPart";
import { placedBeside, type Placed } from "./sheetLayout";

/** Around everything drawn, and between parts (mm). */
const margin = 10;
const textSize = 5;
/** A letter is about so much of its size wide. */
const letterWidth = 0.6;

/** One part at its true size: a drawing in millimeters, for a plotter, a cutter or a projector. */
export const svgOfPart = (titled: TitledPart): string => svgOf(placedBeside([titled], Number.POSITIVE_INFINITY));

/** All parts side by side at their true size. */
export const svgOfParts = (titled: readonly TitledPart[], tallest: number): string =>
  svgOf(placedBeside(titled, tallest));

function svgOf({ parts, width, height }: Placed): string {
  const [w, h] = [width + 2 * margin, height + 2 * margin];
  const groups = parts.map(({ titled, x, y }) => {
    const point = (one: FlatPoint) => ({ x: margin + x + one.x, y: margin + height - y - one.y });
    return group(titled, point);
  });
  return `${[
    `<svg xmlns="http://www.w3.org/2000/svg" width="${figure(w)}mm" height="${figure(h)}mm" viewBox="0 0 ${figure(w)} ${figure(h)}">`,
    `<g fill="none" stroke="#000" stroke-width="0.4" font-family="sans-serif" font-size="${textSize}">`,
    ...groups,
    "</g>",
    "</svg>",
  ].join("\n")}\n`;
}

type ToPage = (point: FlatPoint) => { readonly x: number; readonly y: number };

function group(titled: TitledPart, point: ToPage): string {
  const { part } = titled;
  const frame = partFrame(part);
  const middle = point({ x: frame.left + frame.width / 2, y: frame.bottom + frame.height / 2 } as FlatPoint);
  const path = (points: readonly FlatPoint[]) =>
    `M${points
      .map(point)
      .map(({ x, y }) => `${figure(x)} ${figure(y)}`)
      .join("L")}`;
  const words = foldedWords(titled, frame.width / (letterWidth * textSize)).map(
    (line, i) => `<text x="${figure(middle.x)}" y="${figure(middle.y + i * textSize * 1.3)}">${escaped(line)}</text>`,
  );
  return [
    `<g id="${escaped(part.id)}">`,
    `<path data-line="outline"${dashed(outlineDashes(part))} d="${path(partOutline(part))}Z"/>`,
    ...part.lines.map(
      (line) => `<path data-line="${line.kind}"${dashed(dashesOf[line.kind])} d="${path(line.points)}"/>`,
    ),
    ...part.notches
      .map(point)
      .map(({ x, y }) => `<circle data-line="notch" cx="${figure(x)}" cy="${figure(y)}" r="1"/>`),
    `<g fill="#000" stroke="none" text-anchor="middle">${words.join("")}</g>`,
    "</g>",
  ].join("\n");
}

const dashed = (dashes: readonly number[]): string =>
  dashes.length === 0 ? "" : ` stroke-dasharray="${dashes.join(" ")}"`;

/** To a hundredth of a millimeter. */
const figure = (value: number): string => String(Math.round(100 * value) / 100);

const escaped = (text: string): string =>
  text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
