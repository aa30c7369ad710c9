import { upperFirst } from "../upperFirst";
import type { RemainingKind, Standing, TapePartName } from "../padding";

export type { RemainingKind, Standing, TapePartName } from "../padding";

export const tapePartNames = { girth: "rundum", frontArc: "vorn", backArc: "hinten" } as const;

export function remainingSentence(kind: RemainingKind, amount: string, part: TapePartName, standing: Standing): string {
  if (kind === "there") return standing === "read" ? "am Ziel" : "müsste am Ziel sein";
  if (kind === "toGo") return `${tapePartNames[part]} fehlen ${amount}`;
  return standing === "expected"
    ? `vielleicht ${amount} zu viel: bitte messen`
    : `${tapePartNames[part]} ${amount} zu viel`;
}

export const paddingWords = {
  logFull:
    "Das Protokoll dieser Anprobe ist voll, darin lässt sich nichts mehr festhalten. Beginnen Sie für dieselbe Person eine neue Anprobe.",
  setAside: (count: number): string =>
    count === 1
      ? "Ein Eintrag im Protokoll dieser Anprobe ist nicht möglich und wird nicht benutzt. Er bleibt in der Datei."
      : `${count} Einträge im Protokoll dieser Anprobe sind nicht möglich und werden nicht benutzt. Sie bleiben in der Datei.`,
  nothing: "An dieser Büste zeigt das Maßband schon dasselbe wie an der Person. Es gibt nichts aufzustecken.",
  readings: "Was das Maßband zeigt",
  wanted: "Person",
  reading: (level: string, part: string): string => `${level}, ${part}`,
  about: (length: string): string => `etwa ${length}`,
  follows: (length: string): string => `errechnet sich zu ${length}`,
  pad: "Ziffernblock für das Maß",
  keep: "Das Maß speichern",
  kept: (what: string, length: string, left: string): string => `${upperFirst(what)} ${length}: ${left}.`,
  awake: "Bildschirm anlassen, während ich stecke",
  awakeOn: "Der Bildschirm bleibt an.",
  awakeRefused: "Dieses Gerät hat es nicht erlaubt.",
  speak: "Vorlesen",
  overview: "Alle Linien",
  of: "von",
} as const;
