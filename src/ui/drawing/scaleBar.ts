import { inchMm, type LengthWriter } from "./lengthWriter";
import { segment } from "./pathText";
import { at, type PicturePoint } from "./picturePoint";
import { label, mark, type Label, type Mark } from "./scene";

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
