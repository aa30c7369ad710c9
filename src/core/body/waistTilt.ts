import type { Measurements } from "./measurements";

/**
 * A hip that sits higher on one side, seen from the tape: how much further down its own hip the left side of a level tape lies
 * than the right side does (mm, positive where the left hip is the higher one). Half the difference of the two side lengths from
 * waist to floor belongs to each side; nothing is known unless both were read. The tilt of the waist works the same way, front and back.
 */
export const hipLean = ({ waistToFloorLeft: left, waistToFloorRight: right }: Measurements): number =>
  left === undefined || right === undefined ? 0 : held(left - right);

/** How much higher the waist sits behind than in front (mm); nothing is known unless both lengths to the floor were read. */
export const waistTilt = ({ waistToFloorFront: front, waistToFloorBack: back }: Measurements): number =>
  front === undefined || back === undefined ? 0 : held(back - front);

/** The share by which the left half of a level reads more, where its girth still grows by so much per mm downwards. */
export const leftMore = (lean: number, girth: number, growthPerMm: number): number =>
  ((lean / 2) * Math.max(0, growthPerMm)) / girth;

/**
 * How much more (mm) a tape reads along a waist that tilts so far than it does level, where the plan takes it: the middle over made-up
 * people, 0.8, 2.9, 6.5 and 11.3 mm at 10 to 40 mm (`npm run study:job`); half of that or twice as much are usual.
 */
export const tiltAdds = (tilt: number): number => 0.0072 * tilt ** 2;

/** More than this (mm) is no tilt of a standing body but a tape that slipped. Common practice, no source. */
const mostTilt = 60;

const held = (difference: number): number => Math.max(-mostTilt, Math.min(mostTilt, difference));
