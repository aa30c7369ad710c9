/**
 * SVG text with every decimal number rounded to whole millimetres, so that a picture is the same picture on another
 * machine whose last digits differ, and an element on a line of its own, so that a difference shows where it is. Names,
 * words and whole numbers stay as they are. Numbers inside words ("38.5 in") are left alone.
 */
export function roundedSvg(markup: string): string {
  return markup
    .replace(
      / (d|x|y|cx|cy|r|width|height|viewBox|font-size)="([^"]*)"/g,
      (_, name: string, value: string) => ` ${name}="${roundedNumbers(value)}"`,
    )
    .replace(/></g, ">\n<");
}

const roundedNumbers = (text: string): string =>
  text.replace(/-?\d+\.\d+/g, (number) => {
    const rounded = Math.round(Number(number));
    return String(Object.is(rounded, -0) ? 0 : rounded);
  });
