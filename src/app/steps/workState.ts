import { type LevelName, levelNames, type MeasurementName } from "../../core/body/vocabulary";
import { type CoverCloth, coverMakings, type Making } from "../../document/fittingLimits";

/** Where a tuning layer tunes: a half of a level. */
export type TunePlace = `${"front" | "back"}-${LevelName}`;

export const levelOfPlace = (place: TunePlace): LevelName => place.slice(place.indexOf("-") + 1) as LevelName;

/** An entry of the log as far as the order of the work asks for it. */
export type WorkFact =
  | { readonly did: "prepared" | "marked" | "linesCarried" | "looked" | "replanned" | "trial" }
  | { readonly did: "cut" | "stacked" | "unpinned"; readonly pieceId: string }
  /** `tunes` is where a tuning layer is new or changed, null for every other piece. */
  | { readonly did: "pinned"; readonly pieceId: string; readonly tunes: readonly TunePlace[] | null }
  | { readonly did: "basted"; readonly pieceIds: readonly string[] }
  | { readonly did: "measured"; readonly names: readonly MeasurementName[] }
  | { readonly did: "measuredBetween" }
  | { readonly did: "builtAbove"; readonly build: string }
  | { readonly did: "measuredOverCover"; readonly names: readonly MeasurementName[] }
  | { readonly did: "coverChosen"; readonly cloth: CoverCloth }
  | { readonly did: "made"; readonly what: Making; readonly isPassedOver?: boolean };

/**
 * Where the work stands: what was done before the first piece, what became of every piece, and what the tape was read at since the
 * form last changed.
 */
export interface WorkState {
  readonly isPrepared: boolean;
  readonly areLinesMarked: boolean;
  /** Read, or passed over. */
  readonly areLinesRead: boolean;
  readonly isTried: boolean;
  readonly cut: ReadonlySet<string>;
  readonly stacked: ReadonlySet<string>;
  /** With the places that a tuning layer tunes. */
  readonly pinned: ReadonlyMap<string, readonly TunePlace[] | null>;
  readonly basted: ReadonlySet<string>;
  /** Pinned when the lines were last carried out over the padding. */
  readonly carriedOver: ReadonlySet<string>;
  /** Levels read since the form last changed there; an empty reading counts as not taken and not asked again. */
  readonly readSinceChange: ReadonlySet<LevelName>;
  readonly isReadingDeclined: boolean;
  /** All levels were read, or passed over, since a piece that does not tune was pinned or taken off. */
  readonly isStructureRead: boolean;
  readonly hasLooked: boolean;
  /** How often a place was tuned after its first tuning layer, and which since the tape was last read. */
  readonly tunes: ReadonlyMap<TunePlace, number>;
  readonly tunedSinceRead: ReadonlySet<TunePlace>;
  /** What was built or marked above the bust line, by id. */
  readonly builtAbove: ReadonlySet<string>;
  /** Those of them that were marked while there was no cover. */
  readonly markedUncovered: ReadonlySet<string>;
  /** The padding was read between the level lines for the cover, or that was passed over. */
  readonly isReadBetween: boolean;
  /** Null until it was chosen. */
  readonly cloth: CoverCloth | null;
  /** What the cover that was begun last is made of, also while it is left out; null before any was. */
  readonly coverOf: Exclude<CoverCloth, "none"> | null;
  /** Made over the padding, or passed over. A piece that is pinned or taken off since opens the cover again. */
  readonly made: ReadonlySet<Making>;
  /** Those of them that were passed over. */
  readonly leftOut: ReadonlySet<Making>;
  /** Levels read over the cover as it is now; all of them once that was passed over. */
  readonly readOverCover: ReadonlySet<LevelName>;
  /** Those of them that were passed over. */
  readonly unreadOverCover: ReadonlySet<LevelName>;
  /** Levels read, or passed over, since the cover was corrected: what was read before tells nothing of how it fits now. */
  readonly readOverCorrected: ReadonlySet<LevelName>;
}

export const nothingDone: WorkState = {
  isPrepared: false,
  areLinesMarked: false,
  areLinesRead: false,
  isTried: false,
  cut: new Set(),
  stacked: new Set(),
  pinned: new Map(),
  basted: new Set(),
  carriedOver: new Set(),
  readSinceChange: new Set(),
  isReadingDeclined: false,
  isStructureRead: false,
  hasLooked: false,
  tunes: new Map(),
  tunedSinceRead: new Set(),
  builtAbove: new Set(),
  markedUncovered: new Set(),
  isReadBetween: false,
  cloth: null,
  coverOf: null,
  made: new Set(),
  leftOut: new Set(),
  readOverCover: new Set(),
  unreadOverCover: new Set(),
  readOverCorrected: new Set(),
};

/** The state after a log of facts, from the first to the last. */
export const workState = (facts: readonly WorkFact[]): WorkState => facts.reduce(workAfter, nothingDone);

/** Whether every level was read, or passed over, since the form last changed. */
export const isAllRead = ({ readSinceChange, isReadingDeclined }: WorkState): boolean =>
  isReadingDeclined || levelNames.every((level) => readSinceChange.has(level));

export function workAfter(state: WorkState, fact: WorkFact): WorkState {
  switch (fact.did) {
    case "prepared":
      return { ...state, isPrepared: true };
    case "marked":
      return { ...state, areLinesMarked: true };
    case "trial":
      return { ...state, isTried: true };
    case "linesCarried":
      return { ...state, carriedOver: new Set(state.pinned.keys()) };
    case "looked":
      return { ...state, hasLooked: true };
    case "replanned":
      return state;
    case "cut":
      return { ...state, cut: with1(state.cut, fact.pieceId) };
    case "stacked":
      return { ...state, stacked: with1(state.stacked, fact.pieceId) };
    case "basted":
      return { ...state, basted: new Set([...state.basted, ...fact.pieceIds]) };
    case "unpinned":
      return unpinned(state, fact.pieceId);
    case "pinned":
      return pinned(state, fact.pieceId, fact.tunes);
    case "measured":
      return read(state, fact.names);
    case "builtAbove":
      return builtAbove(state, fact.build);
    case "measuredBetween":
      return { ...state, isReadBetween: true };
    case "measuredOverCover":
      return readOverCover(state, fact.names);
    case "coverChosen":
      return coverChosen(state, fact.cloth);
    case "made":
      return fact.isPassedOver === true ? passedOver(state, fact.what) : madeNow(state, fact.what);
  }
}

const with1 = <Value>(set: ReadonlySet<Value>, one: Value): ReadonlySet<Value> => new Set(set).add(one);

const without = <Value>(set: ReadonlySet<Value>, one: Value): ReadonlySet<Value> =>
  new Set([...set].filter((value) => value !== one));

/**
 * What was read where the form changed tells nothing of how it reads now, and what was seen nothing of how it looks. A tuning
 * layer changes the levels where it lies; any other piece may change them all.
 */
const changed = (state: WorkState, places: readonly TunePlace[] | null): WorkState => ({
  ...state,
  readSinceChange: new Set(
    places === null
      ? []
      : [...state.readSinceChange].filter((level) => !places.some((at) => levelOfPlace(at) === level)),
  ),
  isReadingDeclined: false,
  hasLooked: false,
  isReadBetween: false,
  readOverCover: new Set(),
  unreadOverCover: new Set(),
  ...unmade(state, opened),
});

/** To be made again. */
const unmade = ({ made, leftOut }: WorkState, again: ReadonlySet<Making>): Pick<WorkState, "made" | "leftOut"> => ({
  made: new Set([...made].filter((what) => !again.has(what))),
  leftOut: new Set([...leftOut].filter((what) => !again.has(what))),
});

/** What is to be done again once the padding was changed under its cover. */
const opened: ReadonlySet<Making> = new Set(["coverClosed", "coverCorrected", "putAway"]);

const tuned = (state: WorkState, places: readonly TunePlace[]): WorkState => ({
  ...changed(state, places),
  tunes: new Map([...state.tunes, ...places.map((place) => [place, (state.tunes.get(place) ?? 0) + 1] as const)]),
  tunedSinceRead: new Set([...state.tunedSinceRead, ...places]),
});

function pinned(state: WorkState, pieceId: string, tunes: readonly TunePlace[] | null): WorkState {
  const already = new Set([...state.pinned.values()].flatMap((places) => places ?? []));
  const isTuned = tunes?.some((place) => already.has(place)) ?? false;
  const next = tunes !== null && isTuned ? tuned(state, tunes) : changed(state, tunes);
  const places = [...new Set([...(state.pinned.get(pieceId) ?? []), ...(tunes ?? [])])];
  return {
    ...next,
    pinned: new Map(state.pinned).set(pieceId, tunes === null ? null : places),
    basted: without(state.basted, pieceId),
    isStructureRead: state.isStructureRead && tunes !== null,
  };
}

function unpinned(state: WorkState, pieceId: string): WorkState {
  const tunes = state.pinned.get(pieceId) ?? null;
  const next = tunes === null ? changed(state, null) : tuned(state, tunes);
  return {
    ...next,
    pinned: new Map([...state.pinned].filter(([id]) => id !== pieceId)),
    basted: without(state.basted, pieceId),
    carriedOver: without(state.carriedOver, pieceId),
    isStructureRead: state.isStructureRead && tunes !== null,
  };
}

const madeNow = (state: WorkState, what: Making): WorkState => ({
  ...state,
  made: with1(state.made, what),
  leftOut: without(state.leftOut, what),
  ...(what === "coverCorrected" ? { readOverCorrected: nothingDone.readOverCorrected } : {}),
});

/** There is no cover once this was left out. */
export const endsCover: ReadonlySet<Making> = new Set(["coverCut", "coverFitted"]);

/** Without its panels, or not pinned on, there is no cover; without its parts no arm. */
function passedOver(state: WorkState, what: Making): WorkState {
  if (endsCover.has(what)) return { ...state, cloth: "none" };
  const left = what === "armCut" ? (["armCut", "armSewn", "armFilled", "armHung"] as const) : [what];
  return { ...state, made: new Set([...state.made, ...left]), leftOut: new Set([...state.leftOut, ...left]) };
}

/** A cover of another cloth is made from the beginning. Over padding that had none, what was sewn to the padding goes onto the cover instead. */
function coverChosen(state: WorkState, cloth: CoverCloth): WorkState {
  if (cloth === "none") return { ...state, cloth };
  const isAnother = state.coverOf !== null && state.coverOf !== cloth;
  const again = new Set([...(isAnother ? coverMakings : []), ...(state.cloth === "none" ? sewnToOuter : [])]);
  const readings = isAnother
    ? { readOverCover: nothingDone.readOverCover, unreadOverCover: nothingDone.unreadOverCover }
    : {};
  return { ...state, cloth, coverOf: cloth, ...readings, ...unmade(state, again) };
}

/** What is sewn or tied to whatever lies outermost, and the bag that goes over all. */
const sewnToOuter: readonly Making[] = ["waistTape", "styleLines", "armHung", "putAway"];

const builtAbove = (state: WorkState, build: string): WorkState => ({
  ...state,
  builtAbove: with1(state.builtAbove, build),
  markedUncovered: state.cloth === "none" ? with1(state.markedUncovered, build) : without(state.markedUncovered, build),
});

/** An empty reading passes over all that is left. */
function readOverCover(state: WorkState, names: readonly MeasurementName[]): WorkState {
  const isPassedOver = names.length === 0;
  const levels = levelNames.filter((level) =>
    isPassedOver ? !state.readOverCover.has(level) : names.includes(`${level}Girth`),
  );
  return {
    ...state,
    readOverCover: new Set([...state.readOverCover, ...levels]),
    readOverCorrected: new Set(isPassedOver ? levelNames : [...state.readOverCorrected, ...levels]),
    unreadOverCover: new Set([
      ...[...state.unreadOverCover].filter((level) => !levels.includes(level)),
      ...(isPassedOver ? levels : []),
    ]),
  };
}

function read(state: WorkState, names: readonly MeasurementName[]): WorkState {
  const levels = levelNames.filter((level) => names.includes(`${level}Girth`));
  if (state.pinned.size === 0) {
    // Readings noted together are all that was taken; noted one by one, the rest is still to come.
    const areLinesRead = state.areLinesRead || names.length === 0 || levels.length > 1;
    return state.areLinesMarked ? { ...state, areLinesRead } : state;
  }
  const next: WorkState = {
    ...state,
    readSinceChange: new Set([...state.readSinceChange, ...levels]),
    isReadingDeclined: state.isReadingDeclined || names.length === 0,
  };
  return isAllRead(next) ? { ...next, isStructureRead: true, tunedSinceRead: new Set() } : next;
}
