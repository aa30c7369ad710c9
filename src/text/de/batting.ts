import type { BattingRole } from "../../core/material";
import { pieceBatting } from "../../core/padding/piece";
import { type CutFrom, battingGuesses as englishGuesses, battingWords as english } from "../batting";

export type { CutFrom } from "../batting";

const [needled, thin, bonded, highLoft] = englishGuesses;

/** What the English page and the files of the sample people call a batting. */
const germanNames: { readonly [name: string]: string } = {
  [english.usual]: "übliches Vlies",
  [needled.name]: "genadelte Baumwolle",
  [thin.name]: "dünnes Volumenvlies",
  [bonded.name]: "Volumenvlies",
  [highLoft.name]: "hochbauschiges Volumenvlies",
  batting: "Vlies",
  "Needled cotton": "genadelte Baumwolle",
  "Bonded polyester, the thin one": "Volumenvlies aus Polyester, dünn",
  "Bonded polyester, the middle weight": "Volumenvlies aus Polyester, mittel",
  "Thick bonded polyester": "Volumenvlies aus Polyester, dick",
};

/** A fitting keeps the name it began with, in English; as long as nobody says another one it is shown in German. */
const shownName = (name: string): string => (Object.hasOwn(germanNames, name) ? (germanNames[name] ?? name) : name);

export const battingWords = {
  title: "Das Vlies",
  workedOutFor: "Berechnet für",
  ask: "Welches Vlies haben Sie?",
  supposedFor: "Noch nicht gewählt; vorerst rechnet der Plan mit",
  another: "Ein anderes, oder eines, das Sie gemessen haben",
  usual: "übliches Vlies",
  startsWith: (name: string): string =>
    `Noch ist nicht bekannt, welches Vlies es ist: Der Plan rechnet mit „${shownName(name)}“ und einem Anfangswert. Mit einer Probe oder einem Namen wird es Ihres.`,
  name: "Wie es heißt",
  layer: (isRead: boolean): string =>
    isRead
      ? "So viel macht eine Lage unter straffem Maßband aus"
      : "So viel kann eine Lage unter straffem Maßband ausmachen",
  layerNote:
    "Auf der Packung steht es nicht: Veröffentlichte Zahlen für ein und dasselbe Gewicht weichen um mehr als das Doppelte ab. Wählen Sie einen Anfangswert; Ihr Maßband berichtigt ihn.",
  layerShort: (name: string, layer: string): string => `${shownName(name)}, eine Lage etwa ${layer}`,
  change: "Das Vlies ändern",
  guesses: "Anfangswerte",
  finishedWith: "außen mit",
  first: "Das Vlies zum Aufbauen",
  finishing: "Ein zweites Vlies für außen",
  finishingNote:
    "Meist ein dünneres, für die äußersten Polster. Der Plan nimmt es nur dort, wo so weniger Polster nötig sind und das Maßband trotzdem stimmt.",
  finishingAdd: "Ein zweites Vlies angeben",
  finishingRemove: "Das zweite Vlies weglassen",
  added: "Ein zweites Vlies ist dazugekommen.",
  removed: "Das zweite Vlies ist weggelassen.",
  allOf: (name: string): string =>
    `Für alle Polster dieses Plans nur ein Vlies: ${shownName(name)}. Das andere wird nicht gebraucht.`,
  cutFrom: (name: string): string => `Vlies dafür: ${shownName(name)}.`,
} as const;

export function twoBattingNames(building: string, finishing: string): { readonly [role in BattingRole]: string } {
  const names = { building: shownName(building.trim()), finishing: shownName(finishing.trim()) };
  if (names.building !== "" && names.building.toLowerCase() === names.finishing.toLowerCase()) {
    return { building: `${names.building} (das erste)`, finishing: `${names.finishing} (das zweite)` };
  }
  return { building: names.building || "das erste Vlies", finishing: names.finishing || "das zweite Vlies" };
}

export function cutFrom(building: string, finishing: string | null): CutFrom {
  if (finishing === null) return () => null;
  const names = twoBattingNames(building, finishing);
  return (piece) => names[pieceBatting(piece)];
}

export function battingNames({
  batting,
  finishingBatting,
}: {
  readonly batting: { readonly name: string };
  readonly finishingBatting?: { readonly name: string };
}): { readonly [role in BattingRole]: string } {
  const only = shownName(batting.name) || battingWords.usual;
  return finishingBatting === undefined
    ? { building: only, finishing: only }
    : twoBattingNames(batting.name, finishingBatting.name);
}

export const battingGuesses = [
  { name: shownName(needled.name), layer: needled.layer },
  { name: shownName(thin.name), layer: thin.layer },
  { name: shownName(bonded.name), layer: bonded.layer },
  { name: shownName(highLoft.name), layer: highLoft.layer },
] as const;
