import { levelNames, type MeasurementName } from "../../core/body/vocabulary";
import type { PlannedPiece } from "../../core/plan/plan";
import { makingStep } from "./makingSteps";
import type { Outlook } from "./stepOutlook";
import { type Step, step } from "./step";
import { tunePlaces } from "./workFacts";
import { isAllRead, type TunePlace, type WorkState } from "./workState";

/** How often one place is tuned: nobody's tape knows more. */
const mostTunes = 2;

/** The next step: the same state and outlook always give the same one. */
export function nextStep(state: WorkState, outlook: Outlook): Step {
  const { doubtful, twice } = outlook;
  if (doubtful.length > 0) return readingOf("check", doubtful, outlook);
  if (twice.length > 0) return { ...readingOf("check", twice.slice(0, 1), outlook), isTwice: true };
  return beforeFirst(state, outlook) ?? building(state, outlook) ?? tuning(state, outlook) ?? ending(state, outlook);
}

/** The form made ready, the lines marked and read, and one batting tried, as long as nothing is pinned. */
function beforeFirst(state: WorkState, { isAtLines, isTrialNews, structure, tuning: layers }: Outlook): Step | null {
  if (state.pinned.size > 0 || state.cut.size > 0) return null;
  if (!state.isPrepared) return step("prepare-form");
  if (!isAtLines && !state.areLinesMarked) return step("mark-lines", { levels: levelNames });
  if (!isAtLines && !state.areLinesRead) return step("read-lines", { levels: levelNames, names: lineNames });
  if (structure.length + layers.length === 0 && !isTrialNews) return null;
  if (!state.isTried) return step("trial", { levels: ["waist"] });
  return isTrialNews ? step("plan-anew") : null;
}

/** What is read on each line of the bare form. */
const lineNames = levelNames.flatMap((level) => [`${level}Girth`, `${level}FrontArc`, `${level}Breadth`] as const);

function building(state: WorkState, outlook: Outlook): Step | null {
  const carry = carriedFirst(state, outlook);
  if (carry !== null) return carry;
  const [piece] = outlook.structure;
  if (piece !== undefined) return ofPiece(piece, state);
  return state.pinned.size === 0 || state.isStructureRead ? null : rereading(state, outlook);
}

/** Cut, stacked, pinned: the order of the hands. One layer is no stack. */
function ofPiece(piece: PlannedPiece, state: WorkState): Step {
  if (!state.cut.has(piece.id)) return step("cut", { piece });
  if (piece.layers.length > 1 && !state.stacked.has(piece.id)) return step("stack", { piece });
  return step("pin", { piece });
}

/** Lines that a piece has covered are carried out over it before anything else is placed or read by them. */
function carriedFirst(state: WorkState, { coversLines }: Outlook): Step | null {
  const covering = [...state.pinned.keys()].filter((id) => coversLines.has(id) && !state.carriedOver.has(id));
  return covering.length === 0 ? null : step("carry-lines", { pieceIds: covering });
}

/** After the structure was read: more layers where more than one is missing, else what meets the last fraction. */
function tuning(state: WorkState, outlook: Outlook): Step | null {
  if (outlook.isLayerMissing && isAllRead(state) && !state.isReadingDeclined) return step("plan-anew");
  // Where a tuning layer was taken out, the tape is read before another goes in, and no place is tuned for ever.
  const isOpen = (place: TunePlace) => !state.tunedSinceRead.has(place) && (state.tunes.get(place) ?? 0) < mostTunes;
  const piece = outlook.tuning.find((one) => tunePlaces(one)?.every(isOpen) ?? true);
  if (piece !== undefined) return ofPiece(piece, state);
  if (state.pinned.size === 0) return null;
  if (!isAllRead(state) && state.tunedSinceRead.size === 0) return rereading(state, outlook);
  const tune = state.isReadingDeclined ? undefined : outlook.tunes.find(({ places }) => places.every(isOpen));
  if (tune !== undefined) return tuneOf(tune, state);
  return isAllRead(state) ? null : rereading(state, outlook);
}

/** One more tuning layer is cut before it is slipped in. */
function tuneOf({ act, levels }: Outlook["tunes"][number], state: WorkState): Step {
  if (act.kind === "addLayer" && !state.cut.has(act.piece.id)) return step("cut", { piece: act.piece, levels });
  return step("tune", { act, levels, piece: act.kind === "addLayer" ? act.piece : null });
}

/** Basted and looked at: then the padding is done, and what goes over it begins. */
function ending(state: WorkState, outlook: Outlook): Step {
  const loose = [...state.pinned.keys()].filter((id) => !state.basted.has(id));
  if (loose.length > 0) return step("baste", { pieceIds: loose });
  const [off] = state.made.size === 0 ? outlook.turnsAbove : [];
  if (off !== undefined) return step("correct-above", off);
  const build = outlook.above.find(({ id, act }) => act.what !== "markInward" && !state.builtAbove.has(id));
  if (build !== undefined) return step("build-above", { build });
  if (state.pinned.size > 0 && !state.hasLooked) return step("look", { levels: levelNames });
  if (!isAllRead(state) && state.pinned.size > 0) return readingOf("read-all", fullNames, outlook);
  // Over a form that takes no padding nothing of ours is made.
  return state.pinned.size + state.builtAbove.size === 0 ? step("done") : makingStep(state, outlook);
}

/** Girth and front of the levels that were not read since the form changed. */
const rereading = (state: WorkState, outlook: Outlook): Step =>
  readingOf(
    "read",
    levelNames
      .filter((level) => !state.readSinceChange.has(level))
      .flatMap((level) => [`${level}Girth`, `${level}FrontArc`] as const),
    outlook,
  );

const fullNames = levelNames.flatMap((level) => [`${level}Girth`, `${level}FrontArc`, `${level}BackArc`] as const);

const readingOf = (
  name: "read" | "read-all" | "check",
  names: readonly MeasurementName[],
  { expectedNow }: Outlook,
): Step =>
  step(name, {
    levels: levelNames.filter((level) => names.some((asked) => asked.startsWith(level))),
    names,
    expected: Object.fromEntries(names.flatMap((asked) => (asked in expectedNow ? [[asked, expectedNow[asked]]] : []))),
  });
