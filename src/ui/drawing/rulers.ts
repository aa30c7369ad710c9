import { inchMm, type LengthWriter } from "../../text/lengthWriter";
import { closedPath, segment } from "./pathText";
import { at, label, type Label, mark, type Mark, type PicturePoint } from "./scene";

/** A tape laid along a line: its outline and the ticks across it. Fewer than two points give nothing. */
interface Ribbon {
  readonly outline: string;
  readonly ticks: string;
}

export function ribbon(line: readonly PicturePoint[], width: number, tickStep: number): Ribbon {
  const sides = line.map((point, i) => {
    const [before, after] = [line[i - 1] ?? point, line[i + 1] ?? point];
    const length = Math.hypot(after.x - before.x, after.y - before.y) || 1;
    const across = at((-(after.y - before.y) / length) * (width / 2), ((after.x - before.x) / length) * (width / 2));
    return { one: at(point.x + across.x, point.y + across.y), other: at(point.x - across.x, point.y - across.y) };
  });
  if (sides.length < 2) return { outline: "", ticks: "" };
  return {
    outline: closedPath([...sides.map(({ one }) => one), ...sides.map(({ other }) => other).toReversed()]),
    ticks: ticks(line, width, tickStep),
  };
}

/** Ticks from one edge towards the middle, every second one longer, starting one step from the tape's start. */
function ticks(line: readonly PicturePoint[], width: number, step: number): string {
  const marks: string[] = [];
  let carry = 0;
  let count = 0;
  line.slice(1).forEach((to, i) => {
    const from = line[i] ?? to;
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    if (length === 0) return;
    const [alongX, alongY] = [(to.x - from.x) / length, (to.y - from.y) / length];
    for (let place = step - carry; place <= length; place += step) {
      count++;
      const middle = at(from.x + alongX * place, from.y + alongY * place);
      const reach = (width / 2) * (count % 2 === 0 ? 0 : 0.5);
      marks.push(
        segment(
          at(middle.x + alongY * (width / 2), middle.y - alongX * (width / 2)),
          at(middle.x + alongY * reach, middle.y - alongX * reach),
        ),
      );
    }
    carry = (carry + length) % step;
  });
  return marks.join("");
}

/** A ruler piece of ten centimetres or four inches, ticked, drawn from its left end, with its length in words. */
export function scaleBar(
  from: PicturePoint,
  lengths: LengthWriter,
  textSize: number,
): { readonly marks: readonly Mark[]; readonly labels: readonly Label[] } {
  const step = lengths.unit === "in" ? inchMm : 10;
  const steps = lengths.unit === "in" ? 4 : 10;
  const ticks = Array.from({ length: steps + 1 }, (_, i) => {
    const tall = i === 0 || i === steps ? 0.55 : 0.28;
    return segment(at(from.x + i * step, from.y), at(from.x + i * step, from.y - textSize * tall));
  });
  const end = at(from.x + steps * step, from.y);
  return {
    marks: [mark("ground", segment(from, end), ...ticks)],
    labels: [
      label("quiet", at(end.x + textSize * 0.4, from.y - textSize * 0.25), lengths.write(steps * step), "start"),
    ],
  };
}
