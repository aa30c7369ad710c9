export const turningWords = {
  title: "3D-Ansicht",
  lead: "Die Büste, das Vlies, Polster für Polster, und die Person als durchsichtiger Umriss.",
  same: "Sie zeigt dasselbe wie die Bilder von vorn, von der Seite und von hinten.",
  toPictures: "Bilder von vorn, Seite und hinten",
  backToPlan: "Zurück zum Plan",
  byRule:
    "Über dem Armloch und unter der Hüfte ist nichts gemessen: Diese Teile sind nach Durchschnittswerten gezeichnet.",
  guess: "Eine gestrichelte Linie ist die Person, wo ein Maß geschätzt ist.",
  figure: "Die Figur drehen",
  how: "Ziehen Sie daran, oder benutzen Sie die Pfeiltasten: Links und rechts drehen, hinauf und hinunter kippen. „Pos1“ ist vorn, „Ende“ hinten.",
  howByTouch: "Ziehen Sie mit einem Finger daran, oder benutzen Sie die Knöpfe.",
  turnLeft: "Nach links drehen",
  turnRight: "Nach rechts drehen",
  tipUp: "Mehr von oben sehen",
  tipDown: "Mehr von unten sehen",
  ways: "Gesehen",
  front: "Vorn",
  leftSide: "Linke Seite der Person",
  back: "Hinten",
  rightSide: "Rechte Seite der Person",
  pieces: "Polster auf der Büste",
  earlier: "Voriges Polster",
  later: "Nächstes Polster",
  bare: "Die nackte Büste",
  all: "Alle Polster",
  play: "Eines nach dem anderen zeigen",
  pause: "Anhalten",
  body: "Umriss der Person",
  bareForm: "Die nackte Büste, noch nichts aufgesteckt.",
  countOn: (count: number, all: number): string =>
    count === all ? `Alle ${all} Polster auf der Büste` : `${count} von ${all} Polstern auf der Büste`,
} as const;

export function lookSentence(degrees: number, tip: number): string {
  const eighth = Math.round(degrees / 45) % 8;
  const height = tip > 5 ? ", von oben" : tip < -5 ? ", von unten" : "";
  return `${eighths[eighth] ?? eighths[0]}${height}`;
}

const eighths = [
  "von vorn",
  "von vorn und von links",
  "von der linken Seite",
  "von hinten und von links",
  "von hinten",
  "von hinten und von rechts",
  "von der rechten Seite",
  "von vorn und von rechts",
] as const;
