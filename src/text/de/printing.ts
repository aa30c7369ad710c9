import { upperFirst } from "../upperFirst";
import type { TapePartName } from "../padding";
import { shortCautions } from "./cautions";
import { battingName } from "./grammar/battingName";
import { listed } from "./grammar/listed";
import { tapePartNames } from "./padding";
import { layerCount } from "./pieces";

export const printingWords = {
  title: "Drucken",
  lead: "Jeder Schritt der Arbeit in seiner Reihenfolge und die Zuschneidezeichnungen dazu: alles, was ohne Strom nötig ist. Letter oder A4, schwarzweiß.",
  waiting: "Noch gibt es keinen Plan, also nichts zum Polstern. Das leere Messblatt lässt sich schon drucken.",
  toReadings: "Messen gehen",
  print: "Drucken",
  which: "Welche Blätter",
  nameless: "Ohne den Namen: Keine Seite sagt, für wen sie ist",
  sheets: {
    lines: {
      name: "Linien auf der Büste",
      buys: "Wohin jede Linie der Person kommt, mit Platz für die Maße der nackten Büste.",
    },
    padding: { name: "Das Polsterblatt", buys: "Jeder Schritt, die Figur, Stellen, Maße, Platz zum Schreiben." },
    smallCutting: {
      name: "Kleine Zuschneidezeichnungen",
      buys: "Jedes Polster mit seinen Größen, etwa acht je Seite.",
    },
    supplies: { name: "Material", buys: "Was zu kaufen ist, und wie die Teile auf Vlies und Stoff liegen." },
    session: {
      name: "Kursplan",
      buys: "Für einen Kurs: jeder Schritt mit seinen Minuten, wo man aufhören kann, Kästchen zum Abhaken, Platz für die Tage.",
    },
    measuring: {
      name: "Ein leeres Messblatt",
      buys: "Eine Zeichnung und Platz für jedes Maß, die nötigen zuerst.",
    },
    cutting: {
      name: "Zuschneidezeichnungen",
      buys: "Größer, mit der Stelle für jedes Polster und einem Prüfquadrat.",
    },
  },
  needsPlan: "braucht einen Plan",
  noneChosen: "Wählen Sie ein Blatt, dann steht es hier, wie es gedruckt wird.",
  sheetTitle: (name: string): string => (name === "" ? "Polsterblatt" : `Polsterblatt für ${name}`),
  batting: (batting: string): string => `Vlies: ${battingName(batting)}.`,
  finishing: (batting: string): string => `Für außen: ${battingName(batting)}.`,
  layerAdds: (layer: string, readings: number): string =>
    readings === 0
      ? `Eine Lage kann unter dem Maßband etwa ${layer} ausmachen, ein Anfangswert.`
      : `Eine Lage macht unter dem Maßband etwa ${layer} aus, nach ${readings === 1 ? "einem Maß" : `${readings} Maßen`}.`,
  unused: "Davon wird nichts gebraucht.",
  count: (pieces: number, shapes: number): string =>
    `${pieces === 1 ? "Ein Polster" : `${pieces} Polster`}, ${shapes === 1 ? "ein Zuschnitt" : `${shapes} Zuschnitte`}.`,
  measureHead: {
    level: "Linie",
    body: "Person",
    form: "Nackte Büste",
    parts: { girth: "rundum", frontArc: "vorn", backArc: "hinten" },
  },
  guessNote: "≈ steht vor einer Schätzung: Messen Sie, wenn es geht.",
  parts: {
    before: "Vor dem ersten Polster",
    structure: "Aufbau, in der Reihenfolge des Aufsteckens",
    tuning: "Ausgleichsstücke: zuletzt zuschneiden, nach dem, was das Maßband über dem Aufbau zeigt",
    ending: "Wenn jede Linie am Ziel ist",
    making: "Über dem Polster",
  },
  draftNote: (length: string): string =>
    `Dieser Plan ist ein Entwurf: Maße können bis zu ${length} danebenliegen, bei einer von zehn Personen noch mehr.`,
  draft: (note: string): string =>
    `${note} Zeichnen Sie zuerst die Linien an und messen Sie die nackte Büste: Wie, steht auf dem Blatt der Linien. Dann dieses Blatt neu drucken.`,
  draftBegun: (note: string): string => `${note} Messen Sie nach jedem Polster jede Linie: Das gleicht es aus.`,
  linesFirst: (note: string): string =>
    `Diese Seite zuerst, vor jedem Zuschneiden. ${note} Zeichnen Sie die Linien auf der nackten Büste an, messen Sie dort, tippen Sie es unter Polstern ein und drucken Sie die anderen Seiten neu: Die Polster ändern sich damit.`,
  withoutPower: (around: string, made: string): string =>
    `Wenn nichts getippt oder gedruckt werden kann: Liegt eine Linie höchstens ${around} neben dem, womit das Polsterblatt rechnet, weitermachen. Ist es weniger, bis ${made}, gleichen die Ausgleichsstücke es aus, mit einem zweiten, wo ihre Tabelle „zwei“ sagt. Ist es mehr, aufhören: Was zu dick geplant ist, nimmt Papier nicht wieder weg.`,
  linesOverleaf: (around: string): string =>
    `Vor dem Zuschneiden auf das Blatt der Linien schreiben. Weicht eine Linie um mehr als ${around} von der nackten Büste oben ab, eintippen und dieses Blatt neu drucken.`,
  wearers: "Links und rechts gelten von der Person aus.",
  trial: {
    strip: (turn: string): string =>
      `Der Streifen besteht aus drei Längen bis ${turn}: eine für jede Runde, gekürzt, wo ihre Enden sich treffen. Vorher zweimal messen und mit dem Streifen zweimal; von zwei Maßen gilt die Mitte.`,
    cells: {
      open: ["vorher", "wieder", "über dem Streifen", "wieder", "dazu"],
      noted: ["vorher", "über dem Streifen", "dazu"],
    },
    waiting: "Dieser Plan rechnet noch nicht damit: Unter Polstern die übrigen Polster neu berechnen und neu drucken.",
    how: "Der Zuwachs sagt, wie viele Lagen jedes Polster bekommt. Seine Spalte anstreichen: Die Tabellen der Ausgleichsstücke fragen nach demselben Buchstaben. Ohne Probe gilt C, wie gezeichnet. Weniger Lagen als gezeichnet: die kleinsten weglassen, an der Büste. Mehr: die äußerste noch einmal zuschneiden.",
    gained: "Zuwachs",
    between: (from: string, to: string): string => `${from} bis ${to}`,
    beyond: (least: string, most: string): string =>
      `Unter ${least} oder über ${most}: aufhören, dieses Blatt gilt dann nicht. Noch einmal probieren; bleibt es dabei, die Maße unter Polstern eintippen, neu berechnen und neu drucken.`,
    wrap: "Jede weitere Lage eines Rundpolsters ist um ein Drittel des Zuwachses länger als die darunter. Jede Lage eines Rundpolsters herumlegen und kürzen, wo ihre Kanten sich treffen.",
  },
  readyMade: "fertig gekauft",
  across: (diameter: string): string => `${diameter} Durchmesser`,
  layers: (sizes: readonly string[]): string =>
    `Breite × Höhe jeder Lage, von der Büste nach außen: ${sizes.join("; ")}. Breiten an den Linien: auf den Zuschneidezeichnungen.`,
  lines: (sizes: readonly string[]): string =>
    `Breite × Höhe: ${sizes.join("; ")}. Breiten an den Linien: auf der Zuschneidezeichnung.`,
  readHead: {
    line: "Linie",
    girth: "rundum",
    frontArc: "vorn",
    back: "hinten",
    expect: "erwartet",
    expectRead: "erwartet, gemessen",
    reads: "gemessen",
    end: "am Ende",
    short: "fehlt",
  },
  below: (level: string, distance: string): string => `${distance} unter ${level}`,
  structureRead:
    "„Fehlt“ ist „am Ende“ weniger „gemessen“. Hinten: was rundum fehlt, weniger was vorn fehlt. Ist vorn zu viel, fehlt dort nichts, und hinten fehlt um so viel mehr.",
  finalRead: (tolerance: string): string =>
    `Auf ${tolerance} genau ist am Ziel: so lassen. Mehr zu viel: von dem abziehen, was als fehlend aufgeschrieben ist, und das Ausgleichsstück dort auf die Breite dafür schmaler machen. Mehr zu wenig: dazuzählen und die Lage neu zuschneiden. Höchstens zweimal; dann so lassen.`,
  tuning: (half: "front" | "back", isOpen: boolean): string =>
    `Zuerst nachsehen, wie breit es an jeder Linie wird, zur Hälfte nach jeder Seite der Mittellinie: nach dem, was ${tapePartNames[half === "front" ? "frontArc" : "backArc"]} dort fehlt${isOpen ? ", in der Zeile mit dem Buchstaben der Probe" : ""}. Ist alles gemessen wie erwartet, ist es so breit wie gezeichnet.`,
  tuningShort: "es fehlen",
  tuningColumn: (letter: string): string => `${letter}: es fehlen`,
  tuningNone: "–",
  tuningBeyond: "zwei",
  tuningLegend: (narrowest: string, tolerance: string): string =>
    `Die Breiten mit geraden Kanten verbinden. Die Oberkante um so viel ändern wie die Linie, die ihr am nächsten ist, die Unterkante ebenso; die Höhe bleibt. Eine Zahl zwischen zwei Spalten liegt zwischen deren Breiten. Fehlt nichts, weniger als in der ersten Spalte, oder –: ${narrowest} breit. Zwei: so breit wie die letzte Zahl davor; einschieben, die Linie wieder messen, und fehlt noch mehr als ${tolerance}, ein zweites nach dem, was dann fehlt.`,
  tuningLies: (wrap: string | null, panels: readonly string[]): string =>
    panels.length > 0
      ? `Es liegt ${wrap === null ? "" : `über ${wrap}, `}unter der äußersten Lage: ${listed(panels)}. Wo es selbst außen liegt, die Linien durch das Stück nähen.`
      : wrap === null
        ? "Es liegt auf der Büste selbst."
        : `Es liegt unter der äußersten Lage: ${wrap}.`,
  itRead: (readings: string): string => `Gemessen: ${readings}.`,
  isPinned: "aufgesteckt",
  readAt: (level: string, parts: readonly (readonly [part: TapePartName, length: string])[]): string =>
    `${level} ${parts.map(([part, length]) => (part === "girth" ? length : `${tapePartNames[part]} ${length}`)).join(", ")}`,
  continued: "Fortsetzung",
  overleaf: "Weiter auf der nächsten Seite.",
  limits: (hasSeams: boolean): string =>
    `Zuerst lesen: was Polstern nicht kann${hasSeams ? ", und wo die Seitennähte angezeichnet werden" : ""}`,
  pinsIn: "Nadeln hinein",
  pinsOut: "Nadeln heraus",
  none: "Es gibt nichts aufzustecken: An dieser Büste zeigt das Maßband schon dasselbe wie an der Person.",
  noneShort: "An dieser Büste gibt es nichts aufzustecken: Polstern macht nur größer, und was oben steht, bleibt.",
} as const;

export const trialColumnNames = ["A", "B", "C", "D", "E"] as const;

export const measuringSheetWords = {
  title: "Messblatt",
  blanks: ["Für", "Datum", "Einheit", "Gemessen von"],
  how: "Wird ein BH getragen, ist er an. An der Taille ein schmales Gummiband umbinden. Das Maßband liegt richtig an, wenn es von selbst hält und noch ein Finger darunterpasst. Links und rechts gelten von der Person aus.",
  form: "An der nackten Büste das Maßband ebenso anlegen.",
  body: "Person",
  onForm: "Büste",
} as const;

export const cuttingSheetWords = {
  title: (name: string): string => (name === "" ? "Zuschneidezeichnungen" : `Zuschneidezeichnungen für ${name}`),
  small: (name: string): string =>
    name === "" ? "Kleine Zuschneidezeichnungen" : `Kleine Zuschneidezeichnungen für ${name}`,
  howMany: (layers: number, batting: string | null, edge: string): string =>
    `${upperFirst(layerCount(layers))} zuschneiden${batting === null ? "" : ` (${batting})`}; ${edge}.`,
  square: (length: string): string =>
    `Mit 100 % drucken. Misst das Quadrat nicht ${length} in jeder Richtung, verändert dieser Drucker die Größen.`,
  how: [
    "Die Zeichnungen sind verkleinert. Jede Linie so weit unter der Oberkante zeichnen, wie es dasteht: am Polster entlang gemessen, etwas mehr als senkrecht. Jede Breite auf ihrer Linie anzeichnen, gleich weit nach beiden Seiten der Mittellinie, wenn nicht beides dasteht, beide Enden dazu, die Punkte verbinden und ausschneiden. Neben den Enden steht, wo sie auf der Büste liegen werden.",
    "Die Oberkante ist oben, die linke Seite der Person rechts: Von einem vorderen Polster sehen Sie die Außenseite, von einem hinteren die Seite, die auf der Büste liegt.",
    "Kurze Striche zeigen die Kante, die ausgezupft wird: Fasern mit den Fingern herausziehen, nie mit einer Klinge dünn schneiden.",
    "Ein Streifen wird mit geraden Kanten zugeschnitten; die Breiten an seinen Linien gelten mit geschlossenen Abnähern. Ein Abnäher ist Breite × Länge; „nach beiden Seiten“ heißt über und unter der Linie. Wo ein Abnäher die nächste Linie erreicht, sind beide ein langer Abnäher, an jeder Linie so breit, wie es dasteht. Ausschneiden und die Kanten mit lockeren Stichen verbinden, Kante an Kante. Die Abnäher gleichmäßig verteilen, wie gezeichnet; einer darf auf einer Seitennaht liegen.",
    shortCautions("cutting"),
  ],
} as const;
