/**
 * The cautions of the work, each with the place where the hand is. The short form is always shown, before the step; the
 * long one is a tap away. They are common practice, no source; where chemicals, blades or heat are named, local rules and
 * the maker's label go first.
 */
interface Caution {
  readonly short: string;
  readonly long: string;
}

const labels = "Follow local rules and the maker’s label.";

const cautions = {
  consent: {
    short: "Ask first, and stop when the person says so.",
    long: "Say where the tape will go. The person may measure alone, and may leave any figure out. A child or teenager is measured only with a parent or guardian there.",
  },
  clothes: {
    short: "No pins in clothes somebody wears.",
    long: "Mark the undergarment with stickers, washable pen, clips or narrow elastic. A closed safety pin goes through the fabric alone, never through to the skin.",
  },
  standing: {
    short: "Sit down after each group of measurements.",
    long: "Nobody stands still for more than about ten minutes. Anyone who cannot stand long: measure down from the nape, seated between measurements.",
  },
  allergy: {
    short: "Ask about latex and nickel.",
    long: "Elastic may hold latex, and pins and clips may hold nickel. Cotton tape and plastic clips serve as well.",
  },
  health: {
    short: "Prosthesis, brace: leave it on. Pregnancy, surgery: ask a clinician.",
    long: "Before measuring near a recent surgery or in pregnancy the clinician is asked. Do not press there, and measure again when it changes. A professional fitter is the one to ask about fit, a clinician about the body.",
  },
  base: {
    short: "Lock and weight the base.",
    long: "A padded form is top-heavy. Lock its height and its wheels, and weight or widen the base, above all where children or pets are about.",
  },
  lifting: {
    short: "Two people lift a heavy form.",
    long: "Two also lower it, or the torso comes off its pole first. Hold it by the base and the bare form, never by the padding.",
  },
  blades: {
    short: "Cut away from your hand.",
    long: `Close or sheathe a blade whenever you lay it down, and put needles back into their cushion. ${labels}`,
  },
  dust: {
    short: "Wear a dust mask.",
    long: `Batting sheds fibers. Open a window, wipe instead of shaking, and let nobody with asthma do the cutting. ${labels}`,
  },
  shears: {
    short: "Cut it lying flat, fingers clear.",
    long: `Close the shears, or sheathe a rotary blade, whenever you lay it down, and keep a mat under it. ${labels}`,
  },
  pinsIn: {
    short: "Count the pins in, none between the lips.",
    long: "Take ball-headed pins from a dish and write the count down. The same number comes out again when the piece is basted.",
  },
  pinsDropped: {
    short: "Find a dropped pin at once.",
    long: "Keep a magnet at hand. Children and pets stay out until the floor has been looked over.",
  },
  pinsOut: {
    short: "Count the pins out. One missing: stop.",
    long: "Look on the floor, run a magnet over the padding and press gently over the place. Do not go on until it is found.",
  },
  iron: {
    short: "No iron on the form: polyester melts.",
    long: `Press what is sewn before it goes on the form, with every pin and needle out of it. ${labels}`,
  },
  needles: {
    short: "Count the needles, too.",
    long: "A curved needle is easily left in the padding. Look along each seam before the form is moved or anything is pressed.",
  },
  fiber: {
    short: "Loose fiber: wear a dust mask.",
    long: `Loose fiber flies as it is pulled apart. Open a window, keep it from flames and heaters, and let nobody with asthma do the filling. ${labels}`,
  },
  glue: {
    short: "No spray glue indoors: baste instead.",
    long: `It is breathed in, it burns, and on a foam form its solvent eats the foam. Stitches hold as well and come out again. ${labels}`,
  },
} as const satisfies { readonly [name: string]: Caution };

export type CautionName = keyof typeof cautions;

/** Where the hand is, and what is said there. Each caution stands at the step it belongs to and at no other. */
export const cautionPlaces = {
  measuringBody: ["consent", "clothes", "standing", "allergy", "health"],
  handlingForm: ["lifting", "base"],
  cutting: ["blades", "dust"],
  firstPiece: ["pinsIn", "pinsDropped", "dust", "blades", "base"],
  laterPiece: ["pinsOut", "pinsIn"],
  buildingAbove: ["pinsIn", "pinsOut", "needles"],
  securing: ["pinsOut", "needles"],
  sewing: ["iron", "needles"],
  cuttingFabric: ["shears"],
  covering: ["pinsIn", "iron"],
  lastPins: ["pinsOut", "lifting"],
  fillingArm: ["fiber"],
} as const satisfies { readonly [place: string]: readonly (keyof typeof cautions)[] };
export type CautionPlace = keyof typeof cautionPlaces;

export const cautionsAt = (place: CautionPlace): readonly Caution[] =>
  cautionPlaces[place].map((name) => cautions[name]);

/** The short forms of a place in one line, as paper and the class view say them. */
export const shortCautions = (place: CautionPlace): string =>
  cautionsAt(place)
    .map(({ short }) => short)
    .join(" ");

/** Their short forms in one line. */
export const shortOf = (names: readonly CautionName[]): string => names.map((name) => cautions[name].short).join(" ");

export const cautionTitle = "With care";
