import type { BattingRole } from "../../core/material";
import { pieceBatting } from "../../core/padding/piece";
import { type CutFrom, battingGuesses as englishGuesses } from "../batting";
import { battingName } from "./grammar/battingName";

export type { CutFrom } from "../batting";

export const battingWords = {
  title: "Das Vlies",
  workedOutFor: "Berechnet für",
  ask: "Welches Vlies haben Sie?",
  supposedFor: "Noch nicht gewählt; vorerst rechnet der Plan mit",
  another: "Ein anderes, oder eines, das Sie gemessen haben",
  usual: "übliches Vlies",
  startsWith: (name: string): string =>
    `Noch ist nicht bekannt, welches Vlies es ist: Der Plan rechnet mit „${battingName(name)}“ und einem Anfangswert. Mit einer Probe oder einem Namen wird es Ihres.`,
  name: "Wie es heißt",
  layer: (isRead: boolean): string =>
    isRead
      ? "So viel macht eine Lage unter straffem Maßband aus"
      : "So viel kann eine Lage unter straffem Maßband ausmachen",
  layerNote:
    "Auf der Packung steht es nicht: Veröffentlichte Zahlen für ein und dasselbe Gewicht weichen um mehr als das Doppelte ab. Wählen Sie einen Anfangswert; Ihr Maßband berichtigt ihn.",
  layerShort: (name: string, layer: string): string => `${battingName(name)}, eine Lage etwa ${layer}`,
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
    `Für alle Polster dieses Plans nur ein Vlies: ${battingName(name)}. Das andere wird nicht gebraucht.`,
  cutFrom: (name: string): string => `Vlies dafür: ${battingName(name)}.`,
} as const;

export function twoBattingNames(building: string, finishing: string): { readonly [role in BattingRole]: string } {
  const names = { building: battingName(building.trim()), finishing: battingName(finishing.trim()) };
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
  const only = battingName(batting.name) || battingWords.usual;
  return finishingBatting === undefined
    ? { building: only, finishing: only }
    : twoBattingNames(batting.name, finishingBatting.name);
}

const [needled, thin, bonded, highLoft] = englishGuesses;

export const battingGuesses = [
  { name: battingName(needled.name), layer: needled.layer },
  { name: battingName(thin.name), layer: thin.layer },
  { name: battingName(bonded.name), layer: bonded.layer },
  { name: battingName(highLoft.name), layer: highLoft.layer },
] as const;
