import type { Improvement } from "../core/body/measurementFacts";
import {
  type ByLevel,
  type ByMeasurement,
  type LengthName,
  type LevelName,
  type LevelReadingName,
  lengthNames,
  levelNames,
  levelReadingNames,
  type MeasurementName,
  type tapeReadingNames,
} from "../core/body/vocabulary";
import { armholeTexts } from "./armholeTexts";
import type { MeasurementText } from "./measurementText";
import { levelWords, lineWords } from "./pictures";
import { belowNapeText, depthText, heightText, lengthPlaceTexts } from "./pageTexts";
import { upperChestTexts } from "./upperChestTexts";

/** What the plan does better once it knows a measurement. */
export const improvementText: { readonly [improvement in Improvement]: string } = {
  wholePlan: "The plan starts from it.",
  betweenLevels: "Shapes the padding between the lines above and below.",
  frontAndBack: "Places the front and the back padding.",
  leftAndRight: "Pads each side for itself.",
  sectionShape: "Places the padding toward the front, the back or the sides.",
  apexPlace: "Puts the bust at the right height and width.",
  linePlaces: "Puts each line where the person has it: a tape over the body cannot tell that.",
  levelHeights: "Puts each level line at the person’s height.",
  waistTilt: "Shows a waist that runs lower in front or in back.",
  upperChest: "Builds the upper chest, between the bust and the shoulders.",
  shoulderMatch: "Builds each shoulder up, or shows that the form’s cannot serve.",
  backMatch: "Builds the upper back, or shows that the form’s cannot serve.",
  neckMatch: "Builds the neck out, or shows that the form’s cannot serve.",
  arm: "Only for a padded arm.",
  cover: "Only for the fitted cover.",
};

const girthTexts: ByLevel<MeasurementText> = {
  bust: {
    label: "Bust, all around",
    what: "All around over the fullest part of the bust or chest, over the bra if one is worn.",
    onBody:
      "Bring the tape close under the arms, straight across the back and over the fullest part in front. Read it after a quiet breath out, with the arms down.",
    alone: "Turn sideways to the mirror and check that the tape does not slip down in back.",
    onForm:
      "Lay the tape level over the fullest part of the form’s bust and straight across its back. Read it where the ends meet at a side seam.",
    landmark: "The apex: the point of the bust that stands out farthest, seen from the side.",
    mistake: "The tape sags in back and reads too much.",
  },
  underbust: {
    label: "Underbust, all around",
    what: "All around directly under the bust, where a bra’s band sits.",
    onBody:
      "Lay the tape level on the ribs just under the bust, over the bra if one is worn. Draw it snug and read it after a quiet breath out.",
    alone: "Check in the mirror that the tape is as high in back as in front.",
    onForm:
      "Lay the tape level just under the form’s bust, where it turns in. If the form has no fold there, take the lowest edge of its bust curve.",
    landmark: "The fold under the bust, where it meets the ribs.",
    mistake: "A deep breath held while the tape is read makes it too large.",
  },
  waist: {
    label: "Waist, all around",
    what: "All around the waist, where a narrow elastic settles by itself.",
    onBody:
      "Tie a narrow elastic around the middle and let it settle; it need not be where one bends. Measure over it, snug but not tight, without holding the stomach in.",
    alone: "Stand before the mirror, look straight ahead while the tape settles, and only then down at the figure.",
    onForm:
      "Measure along the form’s waist seam or its narrowest place. Tie an elastic there, since heights are counted from it.",
    landmark: "Mostly midway at the side between the lowest rib and the top of the hip bone.",
    mistake: "Holding the breath, or taking the waistband of the pants for the waist.",
  },
  highHip: {
    label: "High hip, all around",
    what: "All around halfway between waist and full hip, over the front of the hip bones.",
    onBody:
      "Measure halfway down from the waist elastic to the full hip and lay the tape level there. Let it lie over the stomach as it is.",
    alone: "Hold the tape’s start at one side, turn once before the mirror and check that it stays level.",
    onForm:
      "Measure halfway between the form’s waist and its full hip, level all around. Mark the line, for the padding is checked there.",
    landmark: "Just under the front points of the hip bones, about a hand’s width below the waist.",
    mistake: "The tape rides up over the hip bones at the sides.",
  },
  fullHip: {
    label: "Full hip, all around",
    what: "All around over the fullest part of the seat.",
    onBody:
      "The person stands with the feet together; look from the side for the place that goes farthest back. Lay the tape level there and draw it just snug.",
    alone:
      "Find the place sideways before the mirror first, and mark it with a strip of removable tape on the clothes.",
    onForm:
      "Look at the form from the side for the fullest place and measure there, level all around. If the form ends above that, measure at its lower edge and say how far below the waist it is.",
    landmark: "The point of the seat that goes farthest back, seen from the side.",
    mistake: "Feet apart, or a wallet and keys in the back pocket.",
  },
};

const sides = {
  FrontArc: {
    side: "Front",
    across: "across the front from one side seam to the other",
    from: "from the left mark across the front to the right mark",
  },
  BackArc: {
    side: "Back",
    across: "across the back from one side seam to the other",
    from: "from the right mark across the back to the left mark",
  },
  LeftFrontArc: {
    side: "Left front",
    across: "from center front to the left side seam",
    from: "from center front to the left mark",
  },
  RightFrontArc: {
    side: "Right front",
    across: "from center front to the right side seam",
    from: "from center front to the right mark",
  },
  LeftBackArc: {
    side: "Left back",
    across: "from center back to the left side seam",
    from: "from center back to the left mark",
  },
  RightBackArc: {
    side: "Right back",
    across: "from center back to the right side seam",
    from: "from center back to the right mark",
  },
} as const satisfies { readonly [reading in Exclude<(typeof tapeReadingNames)[number], "Girth">]: object };

const levelLabels: ByLevel<string> = {
  bust: "Bust",
  underbust: "Underbust",
  waist: "Waist",
  highHip: "High hip",
  fullHip: "Full hip",
};

function levelText(level: LevelName, reading: LevelReadingName): MeasurementText {
  if (reading === "Girth") return girthTexts[level];
  if (reading === "Depth") return depthText(level);
  if (reading === "BelowNape") return belowNapeText(level);
  if (reading === "Height") return heightText(level);
  return reading === "Breadth" ? breadthText(level) : arcText(level, reading);
}

function arcText(level: LevelName, reading: keyof typeof sides): MeasurementText {
  const { side, across, from } = sides[reading];
  const isWhole = reading === "FrontArc" || reading === "BackArc";
  const center = reading.includes("Front") ? "center front" : "center back";
  return {
    label: `${side} ${levelWords[level]}`,
    what: `The ${lineWords[level]} ${across}.`,
    onBody: `Mark each side straight down from the middle of the underarm with removable tape on the clothes${isWhole ? "" : `, and mark ${center}`}. Lay the tape level ${from}, as snug as it was all around.`,
    alone: "Set the marks sideways to the mirror, then hold the tape’s start at one mark and read it at the other.",
    onForm: `Measure along the ${lineWords[level]} ${across}. If the form has no side seam, mark a straight line down from the middle of the armhole first.`,
    landmark: `The side runs straight down from the middle of the underarm${isWhole ? "" : `; ${center} is above the ${reading.includes("Front") ? "navel" : "backbone"}`}.`,
    mistake: isWhole
      ? "The marks wander forward: front and back together must come to the measurement all around."
      : "Measuring to the last button instead of the center: left and right together must come to the whole.",
  };
}

const breadthText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]}, width straight across`,
  what: `Straight through from side to side, at the height of the ${lineWords[level]}.`,
  onBody: `Hold two books flat, spines in, on the ${lineWords[level]}, one at each side, just touching. Measure between the spines in a straight line.`,
  alone:
    "Stand with one side lightly against a wall, hold a book flat on the line at the other side, step away and measure from the wall to the book.",
  onForm: `Lock the form, and hold two books flat, spines in, on its ${lineWords[level]}; never lean them on a form that can turn. Measure between the spines in a straight line.`,
  landmark: "The widest place on the line, seen from the front, arms held away.",
  mistake: "Holding the books on end, pressing them in, or laying the tape around the front.",
});

const shoulderToApex: MeasurementText = {
  label: "Shoulder to apex",
  what: "From the side neck point, where the shoulder seam meets the neck, down to the fullest point of the bust.",
  onBody:
    "Hold the tape where the shoulder line meets the neck and lead it over the chest to the apex. Measure both sides; they often differ.",
  alone: "Hold the tape’s start with the hand of the same side and read it at the apex in the mirror.",
  onForm:
    "Hold the tape where the form’s shoulder seam meets its neck and lead it over the chest to the point of the bust. Measure both sides.",
  landmark: "The side neck point, where a necklace crosses the shoulder line; and the apex.",
  mistake: "Starting at the middle of the shoulder instead of at the neck.",
};

const shoulderLength: MeasurementText = {
  label: "Shoulder length",
  what: "From the side neck point along the shoulder to its tip.",
  onBody:
    "Feel for the bony tip of the shoulder with the arm hanging. Measure along the top of the shoulder from the neck to that point.",
  alone: "Mark the shoulder tip with a sticker first and read the tape in the mirror.",
  onForm: "Measure along the form’s shoulder seam from its neck edge to the edge of its armhole. Measure both sides.",
  landmark: "The bony tip of the shoulder, above the middle of the arm.",
  mistake: "Going on over the edge into the arm.",
};

const shoulderDrop: MeasurementText = {
  label: "Shoulder slope",
  what: "How much lower the shoulder tip lies than the side neck point, straight down.",
  onBody:
    "Hold a ruler level from the side neck point outward. Measure straight down from it to the bony tip of the shoulder.",
  alone: "Stand straight before the mirror and read both heights on a tape fixed beside it.",
  onForm:
    "Hold a ruler level from the neck end of the form’s shoulder seam. Measure straight down from it to the seam’s outer end.",
  landmark: "Both ends of the shoulder line.",
  mistake: "A lifted shoulder: let the arms hang.",
};

const waistToFloor = (side: string): MeasurementText => ({
  label: `Waist to floor, ${side}`,
  what: `From the waist elastic straight down to the floor at the ${side}.`,
  onBody: `With the shoes that will be worn, or none, hold the tape on the waist elastic at the ${side}. Let it follow the hip and then hang straight to the floor.`,
  alone: "Stand on the tape’s end, bring it up to the elastic and read it there in the mirror.",
  onForm: `Set the form to the person’s height first. Measure from the form’s waist at the ${side} to the floor.`,
  landmark: "The lower edge of the waist elastic.",
  mistake: "Bending to read it: the waist moves down as soon as one bends.",
});

const lengthTexts: { readonly [name in LengthName]: MeasurementText } = {
  shoulderToApex,
  leftShoulderToApex: { ...shoulderToApex, label: "Left shoulder to apex" },
  rightShoulderToApex: { ...shoulderToApex, label: "Right shoulder to apex" },
  ...lengthPlaceTexts,
  ...armholeTexts,
  ...upperChestTexts,
  apexToApex: {
    label: "Apex to apex",
    what: "From one point of the bust to the other, straight across.",
    onBody:
      "Hold the tape at one apex and lead it straight to the other, without pressing it in between. If a bra is worn, it is on.",
    alone: "Hold the tape with both hands and read it in the mirror.",
    onForm: "Measure straight from one point of the form’s bust to the other. Do not follow the surface in between.",
    landmark: "The two apexes.",
    mistake: "The tape dips in between and reads too much.",
  },
  napeToWaist: {
    label: "Back waist length",
    what: "Nape to waist: from the bone at the back of the neck down center back to the waist elastic.",
    onBody:
      "The person bends the head forward so that the bone shows, then holds it upright again. Lead the tape down the backbone to the lower edge of the waist elastic.",
    alone:
      "Fix the tape’s end to the collar over the bone with a clip, let it hang down the back and read it sideways in two mirrors; asking someone is better.",
    onForm: "Measure down the form’s center back from the neck seam to the waist. Follow the surface.",
    landmark: "The lowest bone of the neck, which stands out when the head is bent.",
    mistake: "Measuring with the head still bent, or to a waistband that has slipped.",
  },
  waistToHighHip: {
    label: "Waist to high hip",
    what: "From the waist elastic down the side to the high hip.",
    onBody:
      "Measure at the side from the lower edge of the elastic to where the high hip was measured. Halfway to the full hip is usual.",
    alone: "Stand sideways to the mirror and follow the side seam.",
    onForm: "Measure down the form’s side seam from its waist to the high hip line. Follow the surface.",
    landmark: "The waist elastic and the high hip, at the side.",
    mistake: "Measuring in front, where the way is longer.",
  },
  waistToFullHip: {
    label: "Waist to full hip",
    what: "From the waist elastic down the side to the full hip.",
    onBody:
      "Measure at the side from the lower edge of the elastic to where the full hip was measured. Let the tape follow the hip.",
    alone: "Mark the full hip with a strip of removable tape first, then follow the side seam in the mirror.",
    onForm: "Measure down the form’s side seam from its waist to its fullest place. Follow the surface.",
    landmark: "The waist elastic and the full hip, at the side.",
    mistake: "Stopping at the hip bone, which is far above the full hip.",
  },
  frontWaistLength: {
    label: "Front waist length",
    what: "From the side neck point over the apex down to the waist elastic.",
    onBody:
      "Hold the tape where the shoulder line meets the neck and lead it over the apex. From there let it fall straight to the elastic.",
    alone: "Hold the start with one hand and read the tape at the elastic in the mirror, without bending.",
    onForm:
      "Hold the tape where the form’s shoulder seam meets its neck and lead it over the point of the bust. From there go straight down to the waist.",
    landmark: "The side neck point, the apex, the waist elastic.",
    mistake: "Letting the tape follow the body in under the bust.",
  },
  sideNeckToWaistBack: {
    label: "Side neck to waist, back",
    what: "From the side neck point straight down the back to the waist elastic.",
    onBody:
      "Hold the tape where the shoulder line meets the neck and lead it over the shoulder blade. Read it at the lower edge of the elastic.",
    alone: "Ask someone, or fix the start with a clip and read it sideways in two mirrors.",
    onForm: "Hold the tape where the form’s shoulder seam meets its neck. Lead it straight down the back to the waist.",
    landmark: "The side neck point and the waist elastic.",
    mistake: "Slanting in toward the backbone.",
  },
  waistToFloorFront: waistToFloor("front"),
  waistToFloorBack: waistToFloor("back"),
  waistToFloorLeft: waistToFloor("left side"),
  waistToFloorRight: waistToFloor("right side"),
  shoulderLength,
  leftShoulderLength: { ...shoulderLength, label: "Left shoulder length" },
  rightShoulderLength: { ...shoulderLength, label: "Right shoulder length" },
  shoulderDrop,
  leftShoulderDrop: { ...shoulderDrop, label: "Left shoulder slope" },
  rightShoulderDrop: { ...shoulderDrop, label: "Right shoulder slope" },
  acrossShoulders: {
    label: "Across shoulders",
    what: "Across the back from one shoulder tip to the other, over the nape.",
    onBody:
      "Find the bony tip of each shoulder with the arms hanging. Lead the tape from one over the bone at the nape to the other.",
    alone: "Ask someone; with the arms raised to measure, it reads wrong.",
    onForm: "Measure from the top of one armhole over the nape to the other. Follow the surface.",
    landmark: "The bony tips of the shoulders and the nape.",
    mistake: "Shoulders drawn back or lifted.",
  },
  upperBackWidth: {
    label: "Upper back width",
    what: "Across the shoulder blades from the crease of one arm to the other.",
    onBody:
      "Let the arms hang and find where each makes a crease with the back. Measure level between the creases, halfway down the armhole.",
    alone: "Ask someone; with the arms raised to measure, it reads wrong.",
    onForm: "Measure level between the edges of the armholes, halfway down them. Follow the surface.",
    landmark: "The back creases of the arms, over the shoulder blades.",
    mistake: "Crossed arms, which widen the back.",
  },
  neckGirth: {
    label: "Neck, all around",
    what: "All around the root of the neck, where a plain collarless neckline would lie.",
    onBody:
      "Set the tape on its edge over the bone at the nape and through the hollow of the throat. Let it lie easily.",
    alone: "Lay a fine chain around the neck, mark where it meets, and measure the chain.",
    onForm: "Set the tape on its edge along the form’s neck seam. Read it where the ends meet at the nape.",
    landmark: "The bone at the nape and the hollow of the throat.",
    mistake: "Measuring around the middle of the neck instead of its root.",
  },
  upperArmGirth: {
    label: "Upper arm, all around",
    what: "Around the fullest part of the upper arm, hanging.",
    onBody: "Let the arm hang loose and lay the tape level midway between shoulder and elbow. Draw it just snug.",
    alone: "Make a loop of the tape, slip the arm through and read it in the mirror.",
    onForm: "Only a form with arms has it: measure midway between shoulder and elbow. Leave it out otherwise.",
    landmark: "Midway between the shoulder tip and the elbow.",
    mistake: "A bent or tensed arm reads too much.",
  },
  elbowGirth: {
    label: "Elbow, all around",
    what: "Around the elbow, over its point, with the arm a little bent.",
    onBody:
      "Bend the arm a little, as it hangs by itself. Lay the tape over the point of the elbow and through its crease.",
    alone: "Rest the hand in front of you, so that the arm is a little bent, and loop the tape with the other.",
    onForm: "Only a form with arms has it: measure around the elbow. Leave it out otherwise.",
    landmark: "The point of the elbow.",
    mistake: "A straight arm reads too little for a sleeve.",
  },
  wristGirth: {
    label: "Wrist, all around",
    what: "Around the wrist over the bone on the little finger’s side.",
    onBody: "Lay the tape over the wrist bone. Draw it just snug.",
    alone: "Loop the tape with the other hand and read it directly.",
    onForm: "Only a form with arms has it: measure around the wrist. Leave it out otherwise.",
    landmark: "The round bone on the little finger’s side.",
    mistake: "Measuring above the bone, where it reads less.",
  },
  armLength: {
    label: "Arm length",
    what: "From the shoulder tip down the outside of the arm to the wrist bone.",
    onBody: "Let the arm hang, a little bent. Lead the tape down the outside over the elbow to the wrist bone.",
    alone: "Fix the tape’s start at the shoulder with a clip, let the arm hang and read it at the wrist in the mirror.",
    onForm: "Only a form with arms has it: measure from the shoulder tip to the wrist. Leave it out otherwise.",
    landmark: "The shoulder tip and the wrist bone.",
    mistake: "Measuring along the inside, which is shorter.",
  },
  shoulderToElbow: {
    label: "Shoulder to elbow",
    what: "From the shoulder tip down the outside of the arm to the point of the elbow.",
    onBody: "Let the arm hang, a little bent. Lead the tape down the outside to the point of the elbow.",
    alone: "Fix the tape’s start at the shoulder with a clip and read it at the elbow in the mirror.",
    onForm: "Only a form with arms has it: measure from the shoulder tip to the elbow. Leave it out otherwise.",
    landmark: "The shoulder tip and the point of the elbow.",
    mistake: "Ending at the crease inside the elbow.",
  },
};

export const measurementTexts = Object.fromEntries([
  ...levelNames.flatMap((level) =>
    levelReadingNames.map((reading) => [`${level}${reading}`, levelText(level, reading)] as const),
  ),
  ...lengthNames.map((name) => [name, lengthTexts[name]] as const),
]) as ByMeasurement<MeasurementText>;

/** A measurement's name inside a sentence: "waist all around", "front waist", "back waist length". */
export const measurementInSentence = (name: MeasurementName): string => {
  const label = measurementTexts[name].label.replace(",", "");
  return `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
};
