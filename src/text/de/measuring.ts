import type { Improvement } from "../../core/body/measurementFacts";

export const measuringWords = {
  bodyTitle: "Die Person",
  bodyLead: "Brust, Taille und Hüfte ergeben einen ersten Plan. Jedes weitere Maß macht ihn genauer.",
  formTitle: "Was die Büste selbst misst",
  formLead: "Die Maße der Büste selbst sind besser als jede Größentabelle. Was Sie hier eintippen, gilt immer.",
  measured: "gemessen",
  guessed: "geschätzt",
  fromTable: "aus der Größentabelle",
  draft: "noch nicht gemessen",
  about: (length: string): string => `etwa ${length}`,
  standardDeviation: (length: string): string => `plus oder minus ${length}`,
  empty: "nicht gemessen",
  look: "Bitte nachsehen",
  alone: "Allein, mit Spiegel",
  where: "Wo die Stelle liegt",
  mistake: "Was oft schiefgeht:",
  buys: "Was es verbessert",
  next: (label: string): string => `Weiter: ${label}`,
  last: "Speichern",
  clear: "Das Maß löschen",
  enough: "Brust, Taille und Hüfte sind da: Das genügt für einen Plan, noch ein Entwurf.",
  girthsIn: "Brust, Taille und Hüfte sind da. Als Nächstes kommt die Büste.",
  theyAre: (unit: "cm" | "in", count: number): string => {
    const name = unit === "cm" ? "Zentimeter" : "Zoll";
    return count === 1 ? `Gemeint sind ${name}` : `Gemeint sind überall ${name}`;
  },
  reread: {
    cm: "Als Zentimeter übernommen. „Zurück“ macht es rückgängig.",
    in: "Als Zoll übernommen. „Zurück“ macht es rückgängig.",
  },
  toForm: "Weiter zur Büste",
  toPlan: "Den Plan ansehen",
  more: "Weitere Maße, nach ihrem Nutzen geordnet",
  countIn: (known: number, all: number): string => `${known} von ${all}`,
  name: "Für wen diese Anprobe ist",
  guessNow: (length: string, deviation: string): string =>
    `Vorerst geschätzt: etwa ${length}, plus oder minus ${deviation}.`,
  tableNow: (length: string): string => `In der Größentabelle stehen ${length}.`,
} as const;

export const improvementGroups: {
  readonly [improvement in Improvement]: { readonly title: string; readonly buys: string };
} = {
  wholePlan: { title: "Die ersten drei", buys: "Ein erster Plan." },
  frontAndBack: {
    title: "Vorn und hinten",
    buys: "Verteilt das Polster auf vorn und hinten; nichts anderes kann das.",
  },
  linePlaces: {
    title: "Wo die Linien liegen",
    buys: "Legt jede Linie auf der Büste fest. Eine Linie, die 1 cm falsch liegt, kann rundum 2 cm ausmachen.",
  },
  levelHeights: { title: "Längen über den Körper", buys: "Legt Taille und Hüfte auf die Höhen der Person." },
  betweenLevels: { title: "Mehr rundum", buys: "Formt das Polster unter der Brust und über den Hüftknochen." },
  apexPlace: { title: "Die Brust", buys: "Legt den Brustpunkt auf die richtige Höhe und Weite." },
  leftAndRight: { title: "Links und rechts", buys: "Polstert jede Seite für sich." },
  sectionShape: {
    title: "Breiten, gerade hindurch",
    buys: "Verteilt das Polster zu den Seiten hin oder nach vorn und hinten.",
  },
  waistTilt: {
    title: "Die Neigung der Taille",
    buys: "So kann das Taillenband vorn oder hinten tiefer liegen.",
  },
  upperChest: { title: "Der obere Brustkorb", buys: "Formt, was zwischen Brust und Schultern liegt." },
  shoulderMatch: {
    title: "Schultern",
    buys: "Baut jede Schulter auf oder zeigt, dass die der Büste nicht taugt.",
  },
  backMatch: { title: "Der Rücken", buys: "Baut den oberen Rücken auf oder zeigt, dass der der Büste nicht taugt." },
  neckMatch: { title: "Der Hals", buys: "Baut den Hals auf oder zeigt, dass der der Büste nicht taugt." },
  arm: { title: "Der Arm", buys: "Nur für einen gepolsterten Arm." },
  cover: { title: "Für den Bezug", buys: "Nur für den Bezug." },
};
