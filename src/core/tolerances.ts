import { type Millimetres, mm, type Ratio, ratio } from "./units";

/**
 * Every tolerance of the core, with its unit, its reason and who may use it. A new one needs a physical fact behind it.
 */

/**
 * A planned reading that differs from the body's by no more than this agrees with it; what stays beyond is told as a
 * shortfall. Half the 5 mm to which a tape is read at home, rounded up. Used by the plan and its checks.
 */
export const tapeAgreement: Millimetres = mm(3);

/** A reading within 1/4 in of the person's is right: nobody's tape at home tells closer. Used by the steps of the work. */
export const onTarget: Millimetres = mm(6);

/** The same where a reading is compared as it was written: a quarter of an inch is 6.35 mm, and it is on target. For the steps of the work. */
export const onTargetAsRead: Millimetres = mm(6.4);

/**
 * How far the side seam may be re-marked on each side of the padded form. A seam is a mark, not a place on the body, but
 * beyond about 15 mm a garment fitted on the form would hang from the wrong place. Common practice, no source.
 */
export const mostSeamShift: Millimetres = mm(15);

/** A seam mark that would move by less than a chalk line is wide stays where it is. */
export const leastSeamShift: Millimetres = mm(1);

/**
 * An estimated arc of the form may move by this many of its standard deviations before anything else gives way (95 of
 * 100 forms).
 */
export const arcMovesByDeviations: Ratio = ratio(2);

/**
 * How far readings that should sum to another may miss it: front and back against the girth, left and right against the
 * front. Two or three tapes are each read within 5 mm by one hand. For the checks of what was typed.
 */
export const readingSum: Millimetres = mm(10);

/**
 * Padding whose girths and arcs read within this of the body's is done. Two measuring methods of a trained laboratory count as
 * alike within 9 mm on large girths (ISO 20685, as told in Anthropometry, Apparel Sizing and Design, p. 41), and one tape at
 * home cannot do better; that a home may round it to 10 mm is our inference. Used where a person is told whether it is done.
 */
export const homeTape: Millimetres = mm(10);

/** One standard deviation of a length read straight through a figure, between two books held on a line. A judgement. */
export const straightDeviation: Millimetres = mm(3);

/** A line this close to the one that was read is that one: nobody marks a line closer. */
export const onLine: Millimetres = mm(2);

/**
 * Points of one outline nearer than this are one point: rounding moves them about by less, and a direction taken from one to
 * the other means nothing. For scans around an outline.
 */
export const coincident: Millimetres = mm(1e-6);

/** Nine in ten of Gaussian errors stay within this many standard deviations: half the width of every interval that is told. */
export const nineInTen: Ratio = ratio(1.645);

/**
 * Lengths that only the form decides agree within this: the limit for segment lengths of ISO 20685 as given in Anthropometry,
 * Apparel Sizing and Design, p. 41. For the shoulder, the neck and the back.
 */
export const lengthAgreement: Millimetres = mm(5);

/** The edge of a gathered cap against the oval it is gathered onto: far finer than cloth is cut, so that caps of both cuts are the same. */
export const capEdge: Millimetres = mm(1e-6);
