/**
 * From where the figure is looked at. The turn is in degrees, 0 from the front; as it grows the viewer walks round to the
 * wearer's left side (90), her back (180) and her right side (270). The tip is in degrees above level.
 */
export interface TurningView {
  readonly turn: number;
  readonly tip: number;
}

export const frontView: TurningView = { turn: 0, tip: 12 };

/** Neither the pole from below nor the crown from above has anything to say. */
const [lowestTip, highestTip] = [-20, 50] as const;

export const turned = ({ turn, tip }: TurningView, by: number, tipBy = 0): TurningView => ({
  turn: wrapped(turn + by),
  tip: Math.max(lowestTip, Math.min(highestTip, tip + tipBy)),
});

/** The same direction as an angle from 0 up to, but not including, a whole turn. */
export const wrapped = (degrees: number): number => ((degrees % 360) + 360) % 360;

/**
 * A place as the viewer sees it: across the page to the right, down the page, and how near (larger is nearer). Everything
 * in millimetres, without perspective, so that a breadth on the page is the breadth of the figure.
 */
export interface SeenPoint {
  readonly across: number;
  readonly down: number;
  readonly near: number;
}

export type Look = (x: number, y: number, drop: number) => SeenPoint;

export function lookFrom({ turn, tip }: TurningView): Look {
  const [sideways, ahead] = [Math.sin(radiansOf(wrapped(turn))), Math.cos(radiansOf(wrapped(turn)))];
  const [rise, level] = [Math.sin(radiansOf(tip)), Math.cos(radiansOf(tip))];
  return (x, y, drop) => {
    const toward = y * ahead + x * sideways;
    return { across: x * ahead - y * sideways, down: drop * level + toward * rise, near: toward * level - drop * rise };
  };
}

const radiansOf = (degrees: number): number => (degrees * Math.PI) / 180;
