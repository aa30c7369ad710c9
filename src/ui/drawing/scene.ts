/**
 * A picture before it is drawn: marks and words in millimetres of the thing shown, with the part each mark plays.
 * Scenes are made by pure functions and know nothing of colours, screens or paper; `Drawing` turns one into SVG and
 * the style sheet gives each role its line. Marks are drawn in their order, later ones on top. Every role differs from
 * its neighbours by line or hatch and not by colour alone.
 */

export const markRoles = [
  "form", // the bare form: a filled shape
  "formLine", // the bare form where padding covers it
  "layer", // batting, one of two tints that take turns
  "layerNext",
  "layerNow", // the piece at hand
  "body", // the body, measured: a firm chalk line
  "bodyGuess", // the body where it is estimated: a dashed chalk line
  "piece", // the outline of a piece on the figure
  "pieceNow",
  "feather", // where the batting is pulled thin
  "hatch",
  "hatchNow",
  "shade1", // tints for what lies between two lines
  "shade2",
  "tape", // a tape measure: a filled ribbon
  "tapeTick",
  "tapeHidden", // the tape where the figure hides it
  "straight", // a length measured straight through the air, not along the body
  "seam", // side seams and other sewn or marked lines
  "seamMoved",
  "centre", // centre front, centre back, and fold lines
  "skin", // the person in a measuring figure
  "skinLine",
  "skinFill", // the same fill without an edge
  "garment",
  "stand",
  "pin", // a landmark, drawn as a pin
  "dot", // where a leader ends
  "leader", // thin lines from words to what they name, and dimensions
  "ground", // scale bars, axes, floors
  "want", // a reading to be reached
  "wantGuess", // the same where it is estimated
  "over", // a reading beyond the one wanted
  "torso", // a form as a thing one stands before: its outline
  "torsoShade", // its side away from the light
  "torsoPlate", // armhole plates and the cap of its neck
  "torsoLine", // necklines and the underside of a bust
  "torsoHair", // princess lines
  "torsoCenter", // center lines and side seams
  "torsoBase", // the pole
  "levelLine", // a level line where no tape lies yet
  "tapeOn", // a style tape that lies where it belongs
  "tapeNow", // what the hands are on now
  "battingOn", // batting that is on already, and the layers beneath
  "battingNow", // the batting at hand
  "thread", // basting and running stitches, always broken
  "pinShaft", // a pin in the batting; its head is a dot
  "book", // a thing held against the form
] as const;
type MarkRole = (typeof markRoles)[number];

export interface Mark {
  readonly role: MarkRole;
  /** SVG path data, millimetres. */
  readonly path: string;
  /** How far the whole mark is moved to the right on the page (mm); it stays where its path says if left out. */
  readonly shift?: number;
}

const labelRoles = ["name", "strong", "quiet", "onTape", "atHand", "number", "size", "place"] as const;
export type LabelRole = (typeof labelRoles)[number];

/** Words at a place. The anchor says which end of the words lies there; they are centred on their height. */
export interface Label {
  readonly role: LabelRole;
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly anchor: "start" | "middle" | "end";
}

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface Scene {
  /** A few words for a screen reader's list of pictures. */
  readonly title: string;
  /** What a person who sees it would learn, in sentences. */
  readonly description: string;
  readonly frame: Frame;
  /** The height of ordinary words, in millimetres of the scene. */
  readonly textSize: number;
  readonly marks: readonly Mark[];
  readonly labels: readonly Label[];
}

export const mark = (role: MarkRole, ...paths: readonly string[]): Mark => ({ role, path: paths.join("") });

export const label = (
  role: LabelRole,
  place: { readonly x: number; readonly y: number },
  text: string,
  anchor: Label["anchor"] = "middle",
): Label => ({ role, x: place.x, y: place.y, text, anchor });

/** Marks as a second figure beside the first: the same, further to the right on the page. */
export const movedRight = (by: number, marks: readonly Mark[]): readonly Mark[] =>
  marks.map((item) => ({ ...item, shift: (item.shift ?? 0) + by }));

/** A place in a picture, in millimetres of the thing drawn: x to the right of the page, y down the page. */
export interface PicturePoint {
  readonly x: number;
  readonly y: number;
}

export const at = (x: number, y: number): PicturePoint => ({ x, y });

export const mirrored = (points: readonly PicturePoint[]): readonly PicturePoint[] =>
  points.map(({ x, y }) => at(-x, y)).reverse();

export const between = (from: PicturePoint, to: PicturePoint, share: number): PicturePoint =>
  at(from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share);
