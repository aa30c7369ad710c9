import { upperFirst } from "../upperFirst";
import { type BattingLayout, type BattingSheet, layingGap, lengthOfRoll } from "../../app/supplies/battingLayout";
import type { ClassSupplies } from "../../app/supplies/classSupplies";
import { yardMm } from "../../app/supplies/cost";
import type { CoverCloth } from "../../app/supplies/coverCloth";
import type { ArmNotions, CoverClothKind, FormNotions, Notions } from "../../app/supplies/fittingSupplies";
import { trialLabel } from "../../app/supplies/trialStrip";
import { type LengthStep, type LengthUnit, tapeStep } from "../../core/lengthText";
import { type BattingGood, type BattingGoodId, boughtLength, type ClothWidthId } from "../../core/supplies/goods";
import { type Millimetres, mm } from "../../core/units";
import { clothSize } from "../clothSize";
import { noBreakSpace, shownLength } from "../shownLength";
import { shopLength as englishShopLength } from "../supplies";
import { battingName } from "./grammar/battingName";

export { goodsOffered } from "../supplies";

const figures = (digits: number) =>
  new Intl.NumberFormat("de", { minimumFractionDigits: digits, maximumFractionDigits: 2 });

/** Meters with a comma; yards are counted in eighths, which read the same. */
export const shopLength = (length: Millimetres, unit: LengthUnit): string =>
  unit === "in"
    ? englishShopLength(length, unit)
    : `${figures(0).format(Math.round(length / 100) / 10)}${noBreakSpace}m`;

function aboutLength(length: Millimetres, unit: LengthUnit): string {
  const each = unit === "in" ? yardMm : 1000;
  return shopLength(mm(Math.ceil(length / each) * each), unit);
}

export function goodName(id: BattingGoodId): string {
  const [kind, size = "", soldIn = ""] = id.split("-");
  return kind === "packet"
    ? `Packung, ${size.replace("x", ` × `)}${noBreakSpace}${soldIn}`
    : `Rolle, ${size}${noBreakSpace}${soldIn} breit`;
}

const goodSize = ({ id }: BattingGood): string => {
  const [, size = "", soldIn = ""] = id.split("-");
  return `${size.replace("x", " × ")}${noBreakSpace}${soldIn}`;
};

export function boughtWords(layout: BattingLayout, unit: LengthUnit): string {
  const { good, sheets } = layout;
  if (good.kind === "roll") return `${shopLength(lengthOfRoll(layout), unit)} von der Rolle, ${goodSize(good)} breit`;
  return `${sheets.length === 1 ? "1 Packung" : `${sheets.length} Packungen`} mit ${goodSize(good)}`;
}

export const battingToHave = (name: string, layout: BattingLayout, unit: LengthUnit): string =>
  `${upperFirst(battingName(name))}: ${boughtWords(layout, unit)}.`;

export const battingToHaveShort = (layout: BattingLayout, unit: LengthUnit): string =>
  `Bereitlegen: ${boughtWords(layout, unit)}.`;

const rectangleWords = (width: number, height: number, step: LengthStep): string =>
  [Math.max(width, height), Math.min(width, height)]
    .map((side) => shownLength(mm(side), step))
    .join(`${noBreakSpace}×${noBreakSpace}`);

export function leftWords({ used, sheets }: BattingLayout, step: LengthStep): string {
  const share = `${Math.round(100 * (1 - used))}${noBreakSpace}%`;
  const left = sheets.at(-1)?.left ?? null;
  return left === null
    ? `Etwa ${share} davon bleiben übrig, als Reste zwischen den Teilen.`
    : `Etwa ${share} davon bleiben übrig; das größte Rechteck, das ganz bleibt, misst ${rectangleWords(left.width, left.height, step)}.`;
}

export const layoutWords = (
  { width, length, left, shapes }: BattingSheet,
  name: string,
  layout: BattingLayout,
  unit: LengthUnit,
  step: LengthStep,
) => {
  const isRoll = layout.good.kind === "roll";
  const size = (side: Millimetres) => shownLength(side, isRoll ? tapeStep[unit] : step);
  return {
    title: `Auslegeplan: ${battingName(name)}`,
    description: `${shapes.length === 1 ? "1 Zuschnitt" : `${shapes.length} Zuschnitte`} auf ${goodSize(layout.good)}.`,
    width: size(width),
    length: isRoll ? shopLength(length, unit) : size(length),
    left: left === null ? null : "bleibt übrig",
  };
};

export const clothWidthName = (width: ClothWidthId, unit: LengthUnit): string => `${clothSize(width, unit)} breit`;

export const suppliesWords = {
  title: "Material",
  boughtAs: "Gekauft als",
  sizesFromMemory:
    "Die Größen sind aus dem Gedächtnis, außer der Packung mit 81 × 96 in, die in einem Heft steht; sehen Sie nach, was auf Ihrer Packung steht.",
  laidOut: (step: LengthStep): string =>
    `Mit ${shownLength(mm(layingGap), step)} Abstand ausgelegt, längs oder quer: Vlies hat keinen Fadenlauf.`,
  numbers:
    "Eine Zahl ist ein Polster in der Reihenfolge des Aufsteckens; 3.2 ist die zweite Lage von Polster 3, von der Büste nach außen.",
  trialStrip: "der Streifen der Probe",
  trial: `${trialLabel} ist der Streifen der Probe, eine Länge für jede Runde.`,
  tooLarge: (names: readonly string[]): string =>
    `Dafür zu groß: ${names.join(", ")}. Nehmen Sie eine größere Packung oder eine Rolle.`,
  allCut: "Alles ist zugeschnitten, es wird kein Vlies mehr gebraucht.",
  someCut: (count: number): string =>
    count === 1
      ? "1 Polster ist schon zugeschnitten oder aufgesteckt und nicht mitgezählt."
      : `${count} Polster sind schon zugeschnitten oder aufgesteckt und nicht mitgezählt.`,
  fabric: (hasCover: boolean): string => (hasCover ? "Stoff für Bezug und Arm" : "Stoff für den Arm"),
  cloths: { knit: "Maschenware, um ein Zehntel gedehnt", woven: "Webstoff" } satisfies {
    readonly [kind in CoverClothKind]: string;
  },
  clothKind: "Zugeschnitten aus",
  clothWidth: "Stoffbreite",
  working: "Der Stoff wird berechnet…",
  clothHow: ({ isFitted, coverCount, armCount }: CoverCloth, above: string): string =>
    [
      ...(coverCount === 0
        ? ["Alle Teile liegen in derselben Richtung, im Fadenlauf."]
        : [
            `Alle Teile liegen in derselben Richtung, im Fadenlauf. Jedes reicht ${above} über die Brustlinie hinaus; das wird auf der Büste angezeichnet und abgeschnitten (üblich in der Praxis, ohne Quelle).`,
          ]),
      ...(coverCount > 0 && isFitted ? ["Die Zahlen laufen von hinten rechts der Mitte vorn herum."] : []),
      ...(coverCount > 0 && armCount > 0 ? ["Die letzten Zahlen sind Teile des Arms."] : []),
    ].join(" "),
  noCloth: "Es wird kein Stoff gebraucht: Nichts ist mehr daraus zuzuschneiden.",
  washed: "Den Stoff zuerst waschen, so heiß, wie er je gewaschen wird.",
  notions: "Zutaten",
  priceOf: (what: string, per: string): string => `Preis: ${battingName(what)}, für ${per}`,
  perWords: { packet: "eine Packung", yard: "ein Yard", meter: "einen Meter" },
  notionsPrice: "Preis aller Zutaten zusammen",
  notPrice: (read: string): string =>
    `„${read}“ lässt sich nicht als Preis lesen. Tippen Sie eine Zahl, zum Beispiel 12,50.`,
  cost: "Was es kostet",
  costLead: "Wenn Sie Preise eintippen, werden sie hier zusammengezählt, in Ihrer Währung. Sie bleiben in der Anprobe.",
  costSum: (sum: string): string => `Zusammen ${sum}.`,
  costPart: (sum: string): string => `Zusammen ${sum}, ohne das, was noch keinen Preis hat.`,
} as const;

export const suppliesSheetTitle = (name: string): string => (name === "" ? "Material" : `Material für ${name}`);

const fabricName = (kind: CoverClothKind): string => (kind === "knit" ? "Dehnbare Maschenware" : "Webstoff");

export function clothSentence(
  kind: CoverClothKind,
  width: ClothWidthId,
  { rows, coverCount, armCount, isFitted }: CoverCloth,
  unit: LengthUnit,
): string {
  if (coverCount + armCount === 0) return suppliesWords.noCloth;
  const lies = rows.rows === 1 ? "in einer Reihe" : `in ${rows.rows} Reihen`;
  const parts = [
    ...(coverCount === 0
      ? []
      : [isFitted ? `${coverCount} Teile des Bezugs` : "Vorderteil und zwei Rückenteile eines Bezugs zum Überziehen"]),
    ...(armCount === 0 ? [] : [`${armCount} Teile des Arms`]),
  ].join(" und ");
  return `${clothLength(kind, width, rows.length, unit)} Nebeneinander ${lies}: ${parts}.`;
}

export const clothLength = (kind: CoverClothKind, width: ClothWidthId, length: Millimetres, unit: LengthUnit): string =>
  `${fabricName(kind)}: ${shopLength(boughtLength(length, unit), unit)}, mindestens ${clothWidthName(width, unit)}.`;

export function clothPictureWords(cover: CoverCloth, width: ClothWidthId, unit: LengthUnit) {
  const labels = cover.rows.panels.map(({ id }) => String(1 + cover.ids.indexOf(id)));
  return [
    labels,
    {
      title: "Auslegeplan für den Stoff",
      description: `${labels.length} Teile, alle in derselben Richtung.`,
      width: clothSize(width, unit),
      length: shopLength(boughtLength(cover.rows.length, unit), unit),
      left: null,
    },
  ] as const;
}

export const clothTooWide = (count: number): string =>
  `${count === 1 ? "1 Teil ist" : `${count} Teile sind`} breiter als dieser Stoff: Nehmen Sie einen breiteren.`;

export function notionLines(notions: Notions, unit: LengthUnit): readonly string[] {
  const { waistTape, opening, sewingThread, hasCover, form, arm, isArmFilled } = notions;
  const about = (length: Millimetres) => aboutLength(length, unit);
  return [
    `Stecknadeln: etwa ${notions.pins}, in die Schale abgezählt und zurückgezählt.`,
    `Festes Garn zum Heften: etwa ${about(notions.bastingThread)}.${sewingThread === 0 ? "" : ` Nähgarn: etwa ${about(sewingThread)}.`}`,
    "Eine gebogene Nadel und eine lange gerade.",
    `Für die Linien der Person Markierband oder schmales Gummiband: etwa ${about(notions.markingElastic)}, in fünf Stücke geschnitten; Garn in Kontrastfarbe, um sie nach außen zu übertragen.`,
    "Zum Anzeichnen ein aufrechter Stab, so hoch wie die Büste, mit einer Klammer oder einem Stück Band als Zeiger. Zum Zuschneiden eine Staubmaske.",
    `Markierband: etwa ${about(notions.styleTape)}, für Brust- und Hüftlinien${hasCover ? " und jede Naht des Bezugs" : ""}.`,
    ...(waistTape === null ? [] : [`Köperband für die Taille: ${shownLength(waistTape, tapeStep[unit])}.`]),
    ...formLines(form),
    ...(opening === null
      ? []
      : [
          `Ein Reißverschluss von ${shownLength(opening, tapeStep[unit])} oder eine Schnürung, für die Öffnung in der hinteren Mitte.`,
        ]),
    ...(arm === null ? [] : armLines(arm, unit)),
    ...(isArmFilled
      ? [
          `Lose Füllwatte für den Arm: etwa ${unit === "in" ? "5 bis 9 oz" : "150 bis 250 g"}, aus dem Gedächtnis geschätzt.`,
        ]
      : []),
  ];
}

function formLines({ underCover, hasDials, isWeighted }: FormNotions): readonly string[] {
  const tube = "ein abgeschnittenes T-Shirt oder ein Schlauch aus Maschenware.";
  return [
    ...(underCover === "needed" ? [`Ein straffer dehnbarer Unterbezug für die Büste: ${tube}`] : []),
    ...(underCover === "unsaid"
      ? [`Ein straffer dehnbarer Unterbezug, falls die Büste keine Nadeln annimmt oder nicht Ihnen gehört: ${tube}`]
      : []),
    ...(hasDials ? ["Starkes Klebeband für die Drehknöpfe, damit sich keiner mehr dreht."] : []),
    ...(isWeighted ? ["Gewichte für den Ständer: Sandsäcke oder ein Beutel Reis."] : []),
  ];
}

function armLines({ tab, capCard, wristCard }: ArmNotions, unit: LengthUnit): readonly string[] {
  const size = (length: Millimetres) => shownLength(length, tapeStep[unit]);
  return [
    `Für die Lasche des Arms: fester Webstoff, ${size(tab.length)} × ${size(tab.width)}. Für seine Enden: feste Pappe, ein Oval ${size(capCard.height)} × ${size(capCard.breadth)} und eine Scheibe mit ${size(wristCard.height)} Durchmesser.`,
    `Zum Anhängen des Arms: Klettband und ${unit === "in" ? "1 yd" : "80 cm"} schmales Band für vier Bänder.`,
  ];
}

export const classSuppliesWords = {
  add: (count: number): string => (count === 1 ? "1 Anprobe zusammenzählen" : `${count} Anproben zusammenzählen`),
  working: (at: number, all: number): string => `Anprobe ${at} von ${all} wird berechnet…`,
  leftOut: (names: readonly string[]): string => `Ausgelassen, weil es noch keinen Plan gibt: ${names.join(", ")}.`,
  tooLarge: (labels: readonly string[]): string =>
    `Dafür zu groß: ${labels.join(", ")}. Nehmen Sie bei dieser Anprobe eine größere Packung oder eine Rolle.`,
  letters: (names: readonly string[]): string =>
    `Die Buchstaben: ${names.join(", ")}. Eine Zahl ist ein Polster in der Reihenfolge des Aufsteckens, hinter dem Punkt steht die Lage.`,
} as const;

export function classSuppliesLines(supplies: ClassSupplies, unit: LengthUnit): readonly string[] {
  const about = (length: Millimetres) => aboutLength(length, unit);
  const filling =
    unit === "in"
      ? `${5 * supplies.armsFilled} bis ${9 * supplies.armsFilled} oz`
      : `${150 * supplies.armsFilled} bis ${250 * supplies.armsFilled} g`;
  return [
    ...supplies.cloths.map(
      ({ kind, width, covers, arms, length }) =>
        `${fabricName(kind)} für ${made(covers, arms)}: ${shopLength(length, unit)}, mindestens ${clothWidthName(width, unit)}.`,
    ),
    `Stecknadeln: etwa ${supplies.pins}.`,
    `Festes Garn zum Heften: etwa ${about(supplies.bastingThread)}.${supplies.sewingThread === 0 ? "" : ` Nähgarn: etwa ${about(supplies.sewingThread)}.`}`,
    `Schmales Gummiband zum Markieren: etwa ${about(supplies.markingElastic)}. Markierband: etwa ${about(supplies.styleTape)}. Köperband für die Taillen: ${about(supplies.waistTape)}.`,
    ...(supplies.openings.length === 0
      ? []
      : [
          `Reißverschlüsse oder Schnürungen für Öffnungen in der hinteren Mitte: ${supplies.openings.map((one) => shownLength(one, tapeStep[unit])).join(", ")}.`,
        ]),
    ...counted("Straffe dehnbare Unterbezüge für Büsten", supplies.underCovers),
    ...counted("Büsten mit Drehknöpfen, für die starkes Klebeband nötig ist", supplies.dialed),
    ...counted("Ständer zum Beschweren, mit Sandsäcken oder Beuteln Reis", supplies.weighted),
    ...counted("Arme, jeder mit festem Webstoff für die Lasche, fester Pappe, Bändern und Klettband", supplies.armsCut),
    ...(supplies.armsFilled === 0 ? [] : [`Lose Füllwatte für Arme: etwa ${filling}, aus dem Gedächtnis geschätzt.`]),
  ];
}

const counted = (what: string, count: number): readonly string[] => (count === 0 ? [] : [`${what}: ${count}.`]);

const made = (covers: number, arms: number): string =>
  [
    ...(covers === 0 ? [] : [covers === 1 ? "1 Bezug" : `${covers} Bezüge`]),
    ...(arms === 0 ? [] : [arms === 1 ? "1 Arm" : `${arms} Arme`]),
  ].join(" und ");

export const priceText = (sum: number): string => figures(2).format(sum);
