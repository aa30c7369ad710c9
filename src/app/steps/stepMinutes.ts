import type { Step, StepName } from "./step";

/** How long a step takes (minutes), by how much there is of it. Common practice, no source. */
const usual: { readonly [name in StepName]: number } = {
  "prepare-form": 10,
  "mark-lines": 25,
  "read-lines": 15,
  trial: 10,
  cut: 4,
  stack: 3,
  pin: 8,
  "carry-lines": 10,
  read: 1,
  "plan-anew": 1,
  tune: 5,
  baste: 8,
  "build-above": 20,
  "correct-above": 10,
  look: 5,
  "read-all": 1,
  check: 1,
  "read-between": 8,
  "choose-cover": 5,
  "cut-cover": 60,
  "sew-cover": 60,
  "fit-cover": 45,
  "close-cover": 45,
  "read-cover": 1,
  "correct-cover": 15,
  "hem-cover": 30,
  "waist-tape": 15,
  "mark-armhole": 5,
  "style-lines": 40,
  "cut-arm": 30,
  "sew-arm": 60,
  "fill-arm": 20,
  "hang-arm": 15,
  "put-away": 5,
  done: 0,
};

export function stepMinutes({ do: name, piece, pieceIds, names }: Step): number {
  const each = usual[name];
  switch (name) {
    case "cut":
    case "stack":
      return each * (piece?.layers.length ?? 1);
    case "baste":
      return each * Math.max(1, pieceIds.length);
    case "read":
    case "read-all":
    case "read-cover":
    case "check":
      return each * Math.max(1, names.length);
    default:
      return each;
  }
}
