import type { Improvement } from "../../core/body/measurementFacts";
import {
  type ByLevel,
  type ByMeasurement,
  type LengthName,
  type LevelName,
  type LevelReadingName,
  lengthNames,
  levelNames,
  levelReadingNames,
} from "../../core/body/vocabulary";
import { levelWords } from "./pictures";

/**
 * What each measurement is and how to take it, in our own words. Left and right are the wearer's. The tape is snug when
 * it stays up by itself and a finger still slides under it.
 */
export interface MeasurementText {
  readonly label: string;
  /** What it is. */
  readonly what: string;
  /** How to take it of a body, with someone to help: two sentences. */
  readonly onBody: string;
  /** The same alone, in front of a mirror: one sentence more. */
  readonly alone: string;
  /** How to take it of a form: two sentences. */
  readonly onForm: string;
  /** Where to find the place. */
  readonly landmark: string;
  /** What most often goes wrong. */
  readonly mistake: string;
}

/** What the plan does better once it knows a measurement. */
export const improvementText: { readonly [improvement in Improvement]: string } = {
  wholePlan: "Without it there is no plan.",
  betweenLevels: "Without it this level is estimated from the ones above and below.",
  frontAndBack: "It decides how much goes in front and how much behind; nothing else can tell.",
  leftAndRight: "It lets each side be padded for itself.",
  sectionShape: "It settles how broad and how deep the figure is for its girth.",
  apexPlace: "It puts the bust at the right height and width.",
  levelHeights: "It puts each level at the height where the body has it.",
  waistTilt: "It shows a waist that runs lower in front or behind.",
  shoulderMatch: "It shows whether the form's shoulders can serve.",
  backMatch: "It shows whether the form's back can serve.",
  neckMatch: "It shows whether the form's neck can serve.",
  arm: "It is needed for a padded arm only.",
  cover: "It is needed for the cover only.",
};

const girthTexts: ByLevel<MeasurementText> = {
  bust: {
    label: "Bust girth",
    what: "All round over the fullest part of the bust, in the bra that will be worn.",
    onBody:
      "Bring the tape close under the arms, straight across the back and over the fullest part in front. Read it after a quiet breath out, with the arms down.",
    alone: "Turn sideways to the mirror and see that the tape does not slip down at the back.",
    onForm:
      "Lay the tape level over the fullest part of the form's bust and straight across its back. Read it where the ends meet at a side seam.",
    landmark: "The apex: the point of the bust that stands out furthest, seen from the side.",
    mistake: "The tape sags at the back and reads too much.",
  },
  underbust: {
    label: "Underbust girth",
    what: "All round directly under the breasts, where the bra's band sits.",
    onBody:
      "Lay the tape level on the ribs just under the breasts, with the bra on. Draw it snug and read it after a quiet breath out.",
    alone: "Look in the mirror that the tape is as high behind as in front.",
    onForm:
      "Lay the tape level just under the form's bust, where it turns in. If the form has no fold there, take the lowest edge of its bust curve.",
    landmark: "The fold under the breast, where it meets the ribs.",
    mistake: "A deep breath held while reading makes it too large.",
  },
  waist: {
    label: "Waist girth",
    what: "All round at the waist, midway at the side between the lowest rib and the top of the hip bone.",
    onBody:
      "Find both bones at the side with the fingers, tie a string round between them and let it settle. Measure over the string, snug but not tight, without drawing the stomach in.",
    alone: "Stand before the mirror, look straight ahead while the tape settles, and only then down at the figure.",
    onForm:
      "Measure along the form's waist seam or its narrowest place. Tie the string there, since heights are counted from it.",
    landmark:
      "The midpoint at the side between the lowest rib and the top of the hip bone; it need not be the narrowest place.",
    mistake: "Holding the breath, or taking the waistband of the trousers for the waist.",
  },
  highHip: {
    label: "High hip girth",
    what: "All round halfway between waist and full hip, over the front of the hip bones.",
    onBody:
      "Measure halfway down from the waist string to the full hip and lay the tape level there. Let it lie over the stomach as it is.",
    alone: "Pin the tape's start at one side, turn once before the mirror and see that it stays level.",
    onForm:
      "Measure halfway between the form's waist and its full hip, level all round. Mark the line with pins, for the padding is checked there.",
    landmark: "Just under the front points of the hip bones, about a hand's breadth below the waist.",
    mistake: "The tape rides up over the hip bones at the sides.",
  },
  fullHip: {
    label: "Full hip girth",
    what: "All round over the fullest part of the seat.",
    onBody:
      "Stand with the feet together and look from the side for the place that goes furthest back. Lay the tape level there and draw it just snug.",
    alone: "Find the place sideways before the mirror first, and mark it with a strip of tape on the clothes.",
    onForm:
      "Look at the form from the side for the fullest place and measure there, level all round. If the form ends above that, measure at its lower edge and say how far below the waist it is.",
    landmark: "The point of the seat that goes furthest back, seen from the side.",
    mistake: "Feet apart, or a purse and keys in the back pocket.",
  },
};

const sides = {
  FrontArc: {
    label: "front arc",
    across: "across the front from one side seam to the other",
    from: "from the left mark across the front to the right mark",
  },
  BackArc: {
    label: "back arc",
    across: "across the back from one side seam to the other",
    from: "from the right mark across the back to the left mark",
  },
  LeftFrontArc: {
    label: "left front arc",
    across: "from centre front to the left side seam",
    from: "from centre front to the left mark",
  },
  RightFrontArc: {
    label: "right front arc",
    across: "from centre front to the right side seam",
    from: "from centre front to the right mark",
  },
  LeftBackArc: {
    label: "left back arc",
    across: "from centre back to the left side seam",
    from: "from centre back to the left mark",
  },
  RightBackArc: {
    label: "right back arc",
    across: "from centre back to the right side seam",
    from: "from centre back to the right mark",
  },
} as const satisfies { readonly [reading in Exclude<LevelReadingName, "Girth" | "Breadth">]: object };

const levelLabels: ByLevel<string> = {
  bust: "Bust",
  underbust: "Underbust",
  waist: "Waist",
  highHip: "High hip",
  fullHip: "Full hip",
};

function levelText(level: LevelName, reading: LevelReadingName): MeasurementText {
  if (reading === "Girth") return girthTexts[level];
  return reading === "Breadth" ? breadthText(level) : arcText(level, reading);
}

function arcText(level: LevelName, reading: keyof typeof sides): MeasurementText {
  const { label, across, from } = sides[reading];
  const isWhole = reading === "FrontArc" || reading === "BackArc";
  const centre = reading.includes("Front") ? "centre front" : "centre back";
  return {
    label: `${levelLabels[level]} ${label}`,
    what: `How far it is ${across}, at the height of the ${levelWords[level]}.`,
    onBody: `Mark where the side seams run with a pin in the clothes at each side${isWhole ? "" : `, and mark ${centre}`}. Lay the tape level ${from}, as snug as it was all round.`,
    alone: "Set the pins sideways to the mirror, then hold the tape's start at one pin and read it at the other.",
    onForm: `Measure from seam to seam at the height of the ${levelWords[level]}, ${across}. If the form has no side seam, pin a straight line down from the middle of the armhole first.`,
    landmark: `The side seam runs straight down from the middle of the armpit${isWhole ? "" : `; ${centre} is above the ${reading.includes("Front") ? "navel" : "backbone"}`}.`,
    mistake: isWhole
      ? "The pins wander forward: front and back together must come to the girth."
      : "Measuring to the last button instead of the centre: left and right together must come to the whole.",
  };
}

const breadthText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]} breadth`,
  what: `How broad it is straight through from side to side, at the height of the ${levelWords[level]}.`,
  onBody: `Stand between two straight boards or books held upright against the sides at the ${levelWords[level]}, just touching. Measure between them in a straight line.`,
  alone:
    "Stand with one side lightly against a wall, hold the book upright on the other, step away and measure from the wall to the book.",
  onForm: `Hold two books upright against the form's sides at the ${levelWords[level]}. Measure between them in a straight line.`,
  landmark: "The widest place at that height, seen from the front, arms held away.",
  mistake: "Pressing the boards in, or laying the tape round the front.",
});

const shoulderToApex: MeasurementText = {
  label: "Shoulder to apex",
  what: "From the shoulder at the side of the neck down to the point of the bust.",
  onBody:
    "Hold the tape where the shoulder line meets the neck and lead it over the chest to the apex, with the bra on. Measure both sides; they often differ.",
  alone: "Hold the tape's start with the hand of the same side and read it at the apex in the mirror.",
  onForm:
    "Hold the tape where the form's shoulder seam meets its neck and lead it over the chest to the point of the bust. Measure both sides.",
  landmark: "Where a necklace crosses the shoulder line; and the apex.",
  mistake: "Starting at the middle of the shoulder instead of at the neck.",
};

const shoulderLength: MeasurementText = {
  label: "Shoulder length",
  what: "From the side of the neck along the shoulder to its outer end.",
  onBody:
    "Feel for the bony end of the shoulder with the arm hanging. Measure along the top of the shoulder from the neck to that point.",
  alone: "Mark the bony point with a pin first and read the tape in the mirror.",
  onForm: "Measure along the form's shoulder seam from its neck edge to the edge of the arm plate. Measure both sides.",
  landmark: "The bony end of the shoulder, above the middle of the arm.",
  mistake: "Going on over the edge into the arm.",
};

const waistToFloor = (side: string): MeasurementText => ({
  label: `Waist to floor, ${side}`,
  what: `From the waist string straight down to the floor at the ${side}.`,
  onBody: `Stand in the shoes that will be worn, or none, and hold the tape on the waist string at the ${side}. Let it follow the hip and then hang straight to the floor.`,
  alone: "Stand on the tape's end, bring it up to the string and read it there in the mirror.",
  onForm: `Set the stand to the height of the person first. Measure from the form's waist at the ${side} to the floor.`,
  landmark: "The lower edge of the waist string.",
  mistake: "Bending to read it: the waist drops as soon as you bend.",
});

const lengthTexts: { readonly [name in LengthName]: MeasurementText } = {
  shoulderToApex,
  leftShoulderToApex: { ...shoulderToApex, label: "Left shoulder to apex" },
  rightShoulderToApex: { ...shoulderToApex, label: "Right shoulder to apex" },
  apexToApex: {
    label: "Apex to apex",
    what: "From one point of the bust to the other, straight across.",
    onBody:
      "Hold the tape at one apex and lead it to the other without pressing it into the hollow between. The bra that will be worn is on.",
    alone: "Hold the tape with both hands and read it in the mirror.",
    onForm: "Measure straight from one point of the form's bust to the other. Do not follow the hollow between.",
    landmark: "The two apexes.",
    mistake: "The tape dips into the hollow and reads too much.",
  },
  napeToWaist: {
    label: "Nape to waist",
    what: "From the bone at the back of the neck down the middle of the back to the waist string.",
    onBody:
      "Bend the head forward to find the bone, then hold it upright again. Lead the tape down the backbone to the lower edge of the waist string.",
    alone:
      "Pin the tape's end to the collar over the bone, let it hang down the back and read it sideways in two mirrors; asking someone is better.",
    onForm: "Measure down the form's centre back from the neck seam to the waist. Follow the surface.",
    landmark: "The lowest bone of the neck, which stands out when the head is bent.",
    mistake: "Measuring with the head still bent, or to a waistband that has slipped.",
  },
  waistToHighHip: {
    label: "Waist to high hip",
    what: "From the waist string down the side to the high hip.",
    onBody:
      "Measure at the side from the lower edge of the string to where the high hip girth was taken. Halfway to the full hip is the rule.",
    alone: "Stand sideways to the mirror and follow the side seam.",
    onForm: "Measure down the form's side seam from its waist to the pins of the high hip. Follow the surface.",
    landmark: "Waist string and high hip, at the side.",
    mistake: "Measuring in front, where the stomach makes it longer.",
  },
  waistToFullHip: {
    label: "Waist to full hip",
    what: "From the waist string down the side to the full hip.",
    onBody:
      "Measure at the side from the lower edge of the string to where the full hip girth was taken. Let the tape follow the hip.",
    alone: "Mark the full hip with a strip of tape first, then follow the side seam in the mirror.",
    onForm: "Measure down the form's side seam from its waist to its fullest place. Follow the surface.",
    landmark: "Waist string and full hip, at the side.",
    mistake: "Stopping at the hip bone, which is far above the full hip.",
  },
  frontWaistLength: {
    label: "Front waist length",
    what: "From the shoulder at the side of the neck over the apex down to the waist string.",
    onBody:
      "Hold the tape where the shoulder line meets the neck and lead it over the apex. From there let it fall straight to the string.",
    alone: "Hold the start with one hand and read the tape at the string in the mirror, without bending.",
    onForm:
      "Hold the tape where the form's shoulder seam meets its neck and lead it over the point of the bust. From there go straight down to the waist.",
    landmark: "The neck end of the shoulder line, the apex, the waist string.",
    mistake: "Letting the tape lie in under the bust.",
  },
  backWaistLength: {
    label: "Back waist length",
    what: "From the shoulder at the side of the neck straight down the back to the waist string.",
    onBody:
      "Hold the tape where the shoulder line meets the neck and lead it over the shoulder blade. Read it at the lower edge of the string.",
    alone: "Ask someone, or pin the start and read it sideways in two mirrors.",
    onForm: "Hold the tape where the form's shoulder seam meets its neck. Lead it straight down the back to the waist.",
    landmark: "The neck end of the shoulder line and the waist string.",
    mistake: "Slanting in towards the backbone.",
  },
  waistToFloorFront: waistToFloor("front"),
  waistToFloorBack: waistToFloor("back"),
  waistToFloorLeft: waistToFloor("left side"),
  waistToFloorRight: waistToFloor("right side"),
  shoulderLength,
  leftShoulderLength: { ...shoulderLength, label: "Left shoulder length" },
  rightShoulderLength: { ...shoulderLength, label: "Right shoulder length" },
  shoulderDrop: {
    label: "Shoulder drop",
    what: "How much lower the outer end of the shoulder lies than its neck end, straight down.",
    onBody:
      "Hold a ruler level from the neck end of the shoulder outwards. Measure straight down from it to the bony end of the shoulder.",
    alone: "Stand straight before the mirror and read both heights on a tape fixed beside it.",
    onForm:
      "Hold a ruler level from the neck end of the form's shoulder seam. Measure straight down from it to the seam's outer end.",
    landmark: "Both ends of the shoulder line.",
    mistake: "A lifted shoulder: let the arms hang.",
  },
  acrossBack: {
    label: "Across back",
    what: "Across the back from the outer end of one shoulder to the other, over the nape.",
    onBody:
      "Find the bony end of each shoulder with the arms hanging. Lead the tape from one over the bone at the nape to the other.",
    alone: "Ask someone; with the arms raised to measure, it reads wrong.",
    onForm: "Measure from the top of one arm plate over the nape to the other. Follow the surface.",
    landmark: "The bony ends of the shoulders and the nape.",
    mistake: "Shoulders drawn back or hunched.",
  },
  upperBackWidth: {
    label: "Upper back width",
    what: "Across the shoulder blades from the crease of one arm to the other.",
    onBody:
      "Let the arms hang and find where each makes a crease with the back. Measure level between the creases, halfway down the armhole.",
    alone: "Ask someone; with the arms raised to measure, it reads wrong.",
    onForm: "Measure level between the edges of the arm plates, halfway down them. Follow the surface.",
    landmark: "The back creases of the arms, over the shoulder blades.",
    mistake: "Crossed arms, which widen the back.",
  },
  neckGirth: {
    label: "Neck girth",
    what: "All round the root of the neck, where a plain collarless neckline would lie.",
    onBody:
      "Stand the tape on its edge over the bone at the nape and through the hollow of the throat. Let it lie easily.",
    alone: "Lay a fine chain round the neck, mark where it meets, and measure the chain.",
    onForm: "Stand the tape on its edge along the form's neck seam. Read it where the ends meet at the nape.",
    landmark: "The bone at the nape and the hollow of the throat.",
    mistake: "Measuring round the middle of the neck instead of its root.",
  },
  upperArmGirth: {
    label: "Upper arm girth",
    what: "Round the fullest part of the upper arm, hanging.",
    onBody: "Let the arm hang loose and lay the tape level midway between shoulder and elbow. Draw it just snug.",
    alone: "Make a loop of the tape, slip the arm through and read it in the mirror.",
    onForm: "Only a form with arms has it: measure midway between shoulder and elbow. Leave it out otherwise.",
    landmark: "Midway between the end of the shoulder and the elbow.",
    mistake: "A bent or tensed arm reads too much.",
  },
  elbowGirth: {
    label: "Elbow girth",
    what: "Round the elbow, over its point, with the arm a little bent.",
    onBody:
      "Bend the arm a little, as it hangs by itself. Lay the tape over the point of the elbow and through its crease.",
    alone: "Rest the hand on a table, so that the arm is a little bent, and loop the tape with the other.",
    onForm: "Only a form with arms has it: measure round the elbow. Leave it out otherwise.",
    landmark: "The point of the elbow.",
    mistake: "A straight arm reads too little for a sleeve.",
  },
  wristGirth: {
    label: "Wrist girth",
    what: "Round the wrist over the bone on the little finger's side.",
    onBody: "Lay the tape over the wrist bone. Draw it just snug.",
    alone: "Loop the tape with the other hand and read it directly.",
    onForm: "Only a form with arms has it: measure round the wrist. Leave it out otherwise.",
    landmark: "The round bone on the little finger's side.",
    mistake: "Measuring above the bone, where the arm is thinner.",
  },
  armLength: {
    label: "Arm length",
    what: "From the bony end of the shoulder down the outside of the arm to the wrist bone.",
    onBody: "Let the arm hang, a little bent. Lead the tape down the outside over the elbow to the wrist bone.",
    alone: "Pin the tape's start at the shoulder, let the arm hang and read it at the wrist in the mirror.",
    onForm: "Only a form with arms has it: measure from the shoulder end to the wrist. Leave it out otherwise.",
    landmark: "The bony end of the shoulder and the wrist bone.",
    mistake: "Measuring along the inside, which is shorter.",
  },
  shoulderToElbow: {
    label: "Shoulder to elbow",
    what: "From the bony end of the shoulder down the outside of the arm to the point of the elbow.",
    onBody: "Let the arm hang, a little bent. Lead the tape down the outside to the point of the elbow.",
    alone: "Pin the tape's start at the shoulder and read it at the elbow in the mirror.",
    onForm: "Only a form with arms has it: measure from the shoulder end to the elbow. Leave it out otherwise.",
    landmark: "The bony end of the shoulder and the point of the elbow.",
    mistake: "Ending at the crease inside the elbow.",
  },
};

export const measurementTexts = Object.fromEntries([
  ...levelNames.flatMap((level) =>
    levelReadingNames.map((reading) => [`${level}${reading}`, levelText(level, reading)] as const),
  ),
  ...lengthNames.map((name) => [name, lengthTexts[name]] as const),
]) as ByMeasurement<MeasurementText>;
