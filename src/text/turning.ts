/** Words of the 3-D view: what it shows, how it is turned, and where the same can be read without it. */
export const turningWords = {
  title: "3-D view",
  lead: "The form, the batting going on piece by piece, and the person as a see-through outline.",
  same: "It shows the same as the pictures from the front, the side and the back.",
  toPictures: "Front, side and back pictures",
  backToPlan: "Back to the plan",
  byRule: "Above the armhole and below the full hip nothing was measured: those parts are drawn from averages.",
  guess: "A dashed line is the person where a measurement is estimated.",
  figure: "Turn the figure",
  how: "Drag it, or use the arrow keys: left and right turn it, up and down tip it. Home is the front, End the back.",
  howByTouch: "Drag it with a finger, or use the buttons.",
  turnLeft: "Turn left",
  turnRight: "Turn right",
  tipUp: "Look from higher",
  tipDown: "Look from lower",
  ways: "Look from",
  front: "Front",
  leftSide: "The wearer’s left",
  back: "Back",
  rightSide: "The wearer’s right",
  pieces: "Pieces on the form",
  earlier: "Previous piece",
  later: "Next piece",
  bare: "The bare form",
  all: "Every piece",
  play: "Show them one by one",
  pause: "Stop",
  body: "Person’s outline",
  bareForm: "The bare form, nothing pinned yet.",
  countOn: (count: number, all: number): string =>
    count === all ? `All ${all} pieces on` : `${count} of ${all} pieces on`,
} as const;

/** From where the figure is seen, as a person would say it. */
export function lookSentence(degrees: number, tip: number): string {
  const eighth = Math.round(degrees / 45) % 8;
  const height = tip > 5 ? ", from above" : tip < -5 ? ", from below" : "";
  return `${eighths[eighth] ?? eighths[0]}${height}`;
}

const eighths = [
  "from the front",
  "from the front and the wearer’s left",
  "from the wearer’s left side",
  "from the back and the wearer’s left",
  "from the back",
  "from the back and the wearer’s right",
  "from the wearer’s right side",
  "from the front and the wearer’s right",
] as const;
