import { upperFirst } from "./upperFirst";
import type { LevelName } from "../core/body/vocabulary";
import type { MeasurementText } from "./measurementText";
import { lineWords } from "./pictures";

/** How to find the heights of the level lines, and the depth front to back at each: vertical and straight measurements. */
const levelLabels: { readonly [level in LevelName]: string } = {
  bust: "Bust",
  underbust: "Underbust",
  waist: "Waist",
  highHip: "High hip",
  fullHip: "Full hip",
};

const landmarks: { readonly [level in LevelName]: string } = {
  bust: "the fullest point of the bust",
  underbust: "the elastic under the bust",
  waist: "the waist elastic",
  highHip: "the elastic at the high hip",
  fullHip: "the elastic at the full hip",
};

const sameFloor = "Heights above two different floors, or no nape: without it no height can be used.";

const napeBone = "The lowest bone of the neck, which stands out when the head is bent.";

export const heightText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]}, above the floor`,
  what: `How high the ${lineWords[level]} lies above the floor, straight up.`,
  onBody: `Tape a measuring tape to a door frame with its zero at the floor, and stand side-on to it with the arm raised. Lead a square from ${landmarks[level]} to the tape and read it.`,
  alone: `Stick a small flag of removable tape to a door frame at the height of ${landmarks[level]}, look in a mirror that it is level, then step away and measure.`,
  onForm: `Stand a ruler or stick upright beside the form and mark the height of its ${lineWords[level]}. Measure the height of the mark; a table serves as the floor if all heights start there.`,
  landmark: `${upperFirst(landmarks[level])}, at the side.`,
  mistake: sameFloor,
});

export const belowNapeText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]}, below the nape`,
  what: `How far the ${lineWords[level]} lies below the nape, straight down.`,
  onBody: `Hang a tape from the nape, straight down and not along the back. Lay a ruler level from ${landmarks[level]} to the tape and read it.`,
  alone: `Fasten the tape at the nape to the collar, let it hang free, hold a ruler level against ${landmarks[level]} and read it in two mirrors.`,
  onForm: `Measure the height of the form’s nape and of its ${lineWords[level]} above the floor. The difference is this measurement.`,
  landmark: napeBone,
  mistake: "The tape follows the back: it then reads more than straight down.",
});

export const depthText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]}, depth front to back`,
  what: `How far it is from front to back, straight through, at the ${lineWords[level]}.`,
  onBody: `Hold two books flat on the ${lineWords[level]}, one in front and one behind, spines in, just touching. Measure between them in a straight line.`,
  alone:
    "Stand with the back lightly against a wall, hold a book flat against the front, step away and measure from the wall to the book.",
  onForm: `Hold two books flat on the form’s ${lineWords[level]}, one in front and one behind. Measure between them in a straight line.`,
  landmark: "The places that stand out furthest in front and behind at that height.",
  mistake: "The books slant, or press in.",
});

export const lengthPlaceTexts = {
  napeHeight: {
    label: "Nape, above the floor",
    what: "How high the bone at the back of the neck lies above the floor: all other heights are counted from it.",
    onBody:
      "Bend the head forward to find the bone, then hold it upright again. Lead a square from the bone to a tape that stands on the floor, and read it.",
    alone:
      "Stand with the back to a door frame, lay a ruler level over the bone to the frame, mark it, step away and measure.",
    onForm:
      "Measure from the floor straight up to the form’s neck seam at center back. A table serves as the floor if all heights start there.",
    landmark: napeBone,
    mistake: "The tape follows the back instead of going straight up.",
  },
  lowerEdgeBelowNape: {
    label: "Lower edge of the form, below the nape",
    what: "How far the form’s lower edge lies below its nape, straight down, where it reaches up highest.",
    onBody: "A body has no lower edge. Leave it out.",
    alone: "A body has no lower edge. Leave it out.",
    onForm:
      "Measure the height of the form’s nape and of its lower edge above the floor. The difference is this measurement.",
    landmark: "The lower edge of the firm part, without a skirt or a cage.",
    mistake: "A fabric skirt below the form is measured with it.",
  },
  apexToUnderbust: {
    label: "Bust to underbust, straight down",
    what: "How far the underbust line lies below the fullest point of the bust, straight down.",
    onBody:
      "Hold a ruler upright beside the bust with its end at the elastic under the bust. Read it at the height of the fullest point.",
    alone: "Hold the ruler upright in front of the mirror and read it at the fullest point.",
    onForm: "Hold a ruler upright beside the form’s bust, its end at the underbust line. Read it at the fullest point.",
    landmark: "The fullest point of the bust, and the fold under it.",
    mistake: "The tape follows the curve of the breast.",
  },
  lowerBreastGirth: {
    label: "Lower breast, all around",
    what: "All around, three quarters of the way down from the bust line to the underbust line.",
    onBody:
      "Find the place three quarters of the way down from the bust line to the underbust line. Lay the tape level there and let it touch without pressing in.",
    alone: "Mark the place with a strip of removable tape and see in the mirror that the measuring tape stays level.",
    onForm:
      "Lay the tape level around the form three quarters of the way down from its bust line to its underbust line. Read it where the ends meet.",
    landmark: "Three quarters of the way from the fullest point to the fold under the breast.",
    mistake: "The tape slips down into the fold.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
