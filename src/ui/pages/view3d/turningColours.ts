/**
 * The colours of the turning figure, taken from the style sheet of the page as they stand now: light, dark, more contrast
 * or the system's own.
 */
const colourNames = ["form", "layer", "layerOther", "now", "line", "ink", "body", "ground"] as const;
type ColourName = (typeof colourNames)[number];
export type TurningColours = { readonly [name in ColourName]: Rgb } & {
  /** Shading takes light away from a colour; where colours are forced there is none. */
  readonly shading: number;
  readonly faces: { readonly text: string };
};

export interface Rgb {
  readonly red: number;
  readonly green: number;
  readonly blue: number;
}

export function turningColours(element: HTMLElement, context: CanvasRenderingContext2D): TurningColours {
  const style = getComputedStyle(element);
  const named = (name: ColourName): Rgb => {
    context.fillStyle = style.getPropertyValue(`--turn-${name}`).trim() || "#808080";
    return rgbOf(String(context.fillStyle));
  };
  const colours = Object.fromEntries(colourNames.map((name) => [name, named(name)])) as { [name in ColourName]: Rgb };
  return {
    ...colours,
    shading: Number(style.getPropertyValue("--turn-shading")) || 0,
    faces: { text: style.getPropertyValue("--face-text").trim() || "sans-serif" },
  };
}

/** A canvas answers with `#rrggbb` whatever the colour was written as. */
function rgbOf(hex: string): Rgb {
  const part = (from: number): number => Number.parseInt(hex.slice(from, from + 2), 16) || 0;
  return { red: part(1), green: part(3), blue: part(5) };
}

export const rgbText = ({ red, green, blue }: Rgb, opacity = 1): string =>
  `rgb(${String(Math.round(red))} ${String(Math.round(green))} ${String(Math.round(blue))} / ${String(opacity)})`;

export const mixed = (from: Rgb, to: Rgb, share: number): Rgb => ({
  red: from.red + (to.red - from.red) * share,
  green: from.green + (to.green - from.green) * share,
  blue: from.blue + (to.blue - from.blue) * share,
});

/** A colour under plain light: full light leaves it, none takes the share of the shading towards the dark. */
export const shaded = (colour: Rgb, light: number, shading: number): Rgb =>
  mixed(
    colour,
    { red: colour.red * 0.25, green: colour.green * 0.25, blue: colour.blue * 0.28 },
    (1 - light) * shading,
  );
