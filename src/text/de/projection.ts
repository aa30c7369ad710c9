export { barReading, barWords } from "../projection";

export const projectionWords = {
  open: "Auf den Tisch projizieren",
  openNote:
    "Für einen Projektor über dem Tisch: weiße Linien auf Schwarz in wahrer Größe, ein Teil nach dem anderen, an Ihrem Maßband gemessen.",
  title: "In wahrer Größe projiziert",
  partOf: (at: number, all: number): string => `Teil ${at} von ${all}.`,
  linesOf: {
    cut: "Durchgezogen: schneiden. Gestrichelt: nähen.",
    sewn: "Durchgezogen: schneiden. Gestrichelt: waagerechte Linien.",
  },
  seams: "Kanten mit demselben Buchstaben werden aneinandergenäht.",
  mirrored: "Gespiegelt.",
  tooLarge:
    "Es ist größer als das Bild: Ziehen Sie daran, um den Rest zu sehen, und zeichnen Sie an, wo es weitergeht.",
  grain: "Fadenlauf",
  lay: (length: string): string => `Legen Sie Ihr Maßband auf den Balken: ${length}, von Ende zu Ende.`,
  layHow:
    "Drücken Sie „Kleiner“ oder „Größer“, ziehen Sie am rechten Ende des Balkens, oder tippen Sie ein, was das Maßband zeigt.",
  measures: (width: string, height: string): string =>
    `Legen Sie das Maßband quer über dieses Teil und von oben nach unten: Es soll ${width} und ${height} zeigen. Stimmt nur eines von beiden, hängt der Projektor schief: Richten Sie ihn gerade, und stellen Sie den Balken noch einmal ein.`,
  reads: "Der Balken misst",
  setReading: "Einstellen",
  notLength: (read: string, length: string): string =>
    `„${read}“ kann der Balken nicht messen: Erwartet wird eine Länge um ${length}. Messen Sie ihn noch einmal, und tippen Sie das ein.`,
  smaller: "Kleiner",
  larger: "Größer",
  mirror: "Spiegeln",
  turn: "Drehen",
  previous: "Zurück",
  next: "Geschnitten: nächstes Teil",
  hideBar: "Den Balken verbergen",
  showBar: "Den Balken zeigen",
  close: "Schließen",
} as const;
