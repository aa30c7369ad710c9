import { listed as joined } from "./grammar/listed";

export const planningWords = {
  title: "Der Plan",
  waitingTitle: "Noch gibt es keinen Plan",
  waitingFor: (labels: readonly string[]): string =>
    `Dafür fehlt noch: ${joined(labels)}. Alles andere wird vorerst geschätzt.`,
  waitingForm: "Die Büste ist noch nicht beschrieben: Wählen Sie eine Größentabelle, oder messen Sie die Büste selbst.",
  contradiction: "Einige Maße können nicht zugleich stimmen. Darum gibt es noch nichts zu planen.",
  noBatting:
    "Die Dicke, die für eine Lage Vlies angegeben ist, kann nicht stimmen. Prüfen Sie die Einheit; dann gibt es einen Plan.",
  measureThem: "Messen gehen",
  describeForm: "Die Büste beschreiben",
  pieces: (count: number, shapes: number): string =>
    `${count === 1 ? "Ein Polster aus Vlies" : `${count} Polster aus Vlies`}, ${shapes === 1 ? "ein Zuschnitt" : `${shapes} Zuschnitte`}.`,
  nothing: "Soweit bekannt, zeigt das Maßband an dieser Büste dasselbe wie an der Person: Es ist nichts aufzupolstern.",
  nothingShort:
    "Polstern kann das Maßband an dieser Büste nicht auf die Maße der Person bringen: Es gibt nichts aufzustecken.",
  agreement: (length: string, holds: string): string =>
    `Ist das letzte aufgesteckt, soll das Maßband an jeder Linie das Maß der Person zeigen, auf ${length} genau, ${holds}.`,
  agreementBut: (length: string, holds: string): string =>
    `Ist das letzte aufgesteckt, soll das Maßband die Maße der Person zeigen, auf ${length} genau, ${holds}, außer wo unter „Was Polstern nicht kann“ etwas anderes steht.`,
  holds: {
    guessesAndBatting: "wenn die Schätzungen und die Dicke einer Lage ungefähr stimmen",
    batting: "wenn die Dicke einer Lage ungefähr stimmt",
  },
  guesses: (count: number): string =>
    count === 1
      ? "Ein Maß ist geschätzt und gestrichelt gezeichnet."
      : `${count} Maße sind geschätzt und gestrichelt gezeichnet; mit jedem, das Sie nehmen, passt der Plan besser zur Person.`,
  whichForm: (size: string): string =>
    `Welche Büste haben Sie? Größe ${size} ist nur eine Annahme, weil Polstern sie ausfüllen kann.`,
  sayWhichForm: "Angeben, welche Büste es ist",
  beforeCutting: "Vor dem Zuschneiden",
  shopping: "Was bereitliegen soll",
  largest: (size: string): string => `Das größte: ${size}.`,
  everythingElse: "Nadeln, Garn, Taillenband: die ganze Liste",
  cannot: "Was Polstern nicht kann",
  otherForm: "Andere Größen ansehen",
  seams: "Wo die Seitennähte anzuzeichnen sind",
  levels: "Linie für Linie",
  level: "Linie",
  pieceList: "Polster, in der Reihenfolge des Aufsteckens",
  toPadding: "Mit dem Polstern beginnen",
  goOnPadding: "Weiter polstern",
  toPrint: "Drucken",
  tableHead: { reading: "", body: "Person", form: "Büste jetzt", add: "dazu", after: "danach" },
  formSupposed: "Büste jetzt (geschätzt)",
  atBodyHeight: (off: string, isBelow: boolean, level: string): string =>
    `Die Büste auf der Höhe der Person: ${off} ${isBelow ? "unter" : "über"} der eigenen Linie der Büste (${level}).`,
  sides: (levels: string): string =>
    `Nur geschätzt ist die Breite gerade hindurch hier: ${levels}. Das Vlies kann darum innerhalb der gestrichelten Linie enden oder darüber hinausgehen. Das Maßband zeigt trotzdem das Richtige.`,
  measureBreadth: "Eine Breite gerade hindurch messen",
  rows: { girth: "rundum", frontArc: "vorn", backArc: "hinten", depthBelowNape: "unter dem Nacken" },
  guessed: "geschätzt",
  larger: "Größere Zeichnung",
  backToPlan: "Zurück zum Plan",
  chooseLevel: "Welche Linie zu sehen ist",
} as const;

export const listed = (words: readonly string[]): string => joined(words);
