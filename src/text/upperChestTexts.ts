import type { MeasurementText } from "./measurementText";

/** How to measure the chest above the bust: around it, across its front, and how high it lies. */
export const upperChestTexts = {
  upperChestGirth: {
    label: "Upper chest, all around",
    what: "The high bust: all around close under the arms, above the fullness of the bust.",
    onBody:
      "Lay the tape level as high under the arms as it goes, straight across the back and above the bust in front. Read it after a quiet breath out, with the arms down.",
    alone: "Look in the mirror that the tape is as high in back as in front.",
    onForm:
      "Mark the person’s upper chest line on the form and lay the tape level on it. Where the armhole reaches lower, lead the tape straight across the opening.",
    landmark: "Just below the underarm, where the front is still flat.",
    mistake: "The tape slides down onto the bust in front and reads too much.",
  },
  upperChestFrontArc: {
    label: "Front upper chest",
    what: "The upper chest line across the front, from below the middle of one underarm to the other.",
    onBody:
      "Mark each side straight down from the middle of the underarm with removable tape on the clothes. Lay the tape level from the left mark across the front to the right mark.",
    alone: "Set the marks sideways to the mirror, then hold the tape’s start at one mark and read it at the other.",
    onForm:
      "Measure along the person’s upper chest line across the form’s front. Start and end at its side seams, or straight above them.",
    landmark: "The side runs straight down from the middle of the underarm.",
    mistake: "The marks wander forward, and the front reads too little.",
  },
  upperChestBelowNape: {
    label: "Upper chest, below the nape",
    what: "How far the upper chest line lies below the nape, straight down.",
    onBody:
      "Hang a tape from the nape, straight down and not along the back. Lay a ruler level from the upper chest tape to it and read it.",
    alone:
      "Fasten the tape at the nape to the collar, let it hang free, hold a ruler level and read it in two mirrors.",
    onForm:
      "Not needed where the upper chest was measured on the person’s line. Otherwise measure the heights of the form’s nape and of the tape above the floor: the difference is this measurement.",
    landmark: "The lowest bone of the neck, and the upper edge of the upper chest tape.",
    mistake: "The tape follows the back: it then reads more than straight down.",
  },
  acrossChest: {
    label: "Across chest",
    what: "Across the front from the crease of one arm to the other, halfway down the armhole.",
    onBody:
      "Let the arms hang and find where each makes a crease with the chest. Measure level between the creases, halfway between shoulder and underarm.",
    alone: "Mark both creases with removable tape first, then lay the tape from one to the other before the mirror.",
    onForm: "Measure level across the front between the edges of the armholes, halfway down them. Follow the surface.",
    landmark: "The front creases of the arms.",
    mistake: "Shoulders drawn back, which widens the chest.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
