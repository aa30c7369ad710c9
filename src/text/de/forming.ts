import type { ChartKind, ChartSource } from "../../core/form/formTable";

export const formingWords = {
  title: "Die Büste",
  lead: "Polstern macht nur größer. Darum muss die Büste überall kleiner sein als die Person.",
  tableTitle: "Die Größe, unter der sie verkauft wird",
  tableLead:
    "Eine Größennummer sagt wenig über eine Büste: Hersteller und Tabellen weichen voneinander ab. Für einen ersten Plan und für den Kauf reicht sie. Was Sie an den Linien der Büste selbst messen, gilt immer.",
  table: "Größentabelle",
  noTable: "Keine Größentabelle: Die Büste wird gemessen",
  size: "Größe",
  toolChooses: (size: string): string => `Aus den Maßen errechnet: ${size}`,
  best: "errechnet",
  why: (name: string, gain: string, layers: number): string =>
    `Größe ${name} ist die größte, die nirgends größer ist als die Person. Polster an der Taille: ${gain} rundum, ${layerCount(layers)}.`,
  noneFits: (name: string, over: string): string =>
    `Jede Größe dieser Tabelle ist irgendwo größer als die Person. Am nächsten kommt Größe ${name}: insgesamt ${over} größer.`,
  nothingOver: "nirgends größer",
  over: (length: string): string => `${length} größer, alle Linien zusammen`,
  toAdd: (length: string): string => `rundum ${length} aufzupolstern, alle Linien zusammen`,
  waistLayers: (layers: number): string => `${layerCount(layers)} an der Taille`,
  noLayers: "keine Lage an der Taille",
  measuredWins:
    "Die Maße der Büste selbst sind da, die Tabelle ergänzt nur, was fehlt. Eine Größennummer sagt wenig; was Sie an den Linien gemessen haben, gilt immer.",
  needsBody: "Sobald Brust, Taille und Hüfte der Person da sind, werden die Größen hier verglichen.",
  kinds: {
    standard: "Veröffentlichte Normen",
    survey: "Reihenmessungen",
    privatePage: "Seiten von Privatleuten",
  } satisfies { readonly [kind in ChartKind]: string },
  source: ({ kind, title, year }: ChartSource): string => `${sourceKinds[kind]}: ${title}, ${year}.`,
  lacks: "enthält keine Hüfte: Messen Sie die Hüfte der Büste",
  reachesFurther: (title: string): string => `Die Tabelle „${title}“ passt besser zu dieser Person.`,
  take: (title: string): string => `„${title}“ nehmen`,
  sizeHead: { size: "Größe", bust: "Brust", waist: "Taille", fullHip: "Hüfte", verdict: "Für diese Person" },
  allSizes: "Alle Größen",
} as const;

const sourceKinds: { readonly [kind in ChartKind]: string } = {
  standard: "Zahlen einer veröffentlichten Norm",
  survey: "Zahlen einer Reihenmessung",
  privatePage: "Zahlen von einer privaten Seite, keine Norm",
};

const layerCount = (layers: number): string =>
  layers === 0 ? "weniger als eine Lage" : layers === 1 ? "etwa eine Lage" : `etwa ${layers} Lagen`;
