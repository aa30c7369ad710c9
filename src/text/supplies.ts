import { upperFirst } from "./upperFirst";
import { type BattingLayout, type BattingSheet, layingGap, lengthOfRoll } from "../app/supplies/battingLayout";
import type { ClassSupplies } from "../app/supplies/classSupplies";
import type { CoverCloth } from "../app/supplies/coverCloth";
import { yardMm } from "../app/supplies/cost";
import type { ArmNotions, CoverClothKind, FormNotions, Notions } from "../app/supplies/fittingSupplies";
import { trialLabel } from "../app/supplies/trialStrip";
import { type LengthStep, type LengthUnit, tapeStep } from "../core/lengthText";
import {
  type BattingGood,
  battingGood,
  type BattingGoodId,
  boughtLength,
  type ClothWidthId,
} from "../core/supplies/goods";
import { type Millimetres, mm } from "../core/units";
import { clothSize } from "./clothSize";
import { noBreakSpace, shownLength, unbroken } from "./shownLength";

/** A length as a shop cuts it: yards and eighths, or meters and tenths. What is given is already such a step. */
export function shopLength(length: Millimetres, unit: LengthUnit): string {
  if (unit !== "in") return unbroken(`${(Math.round(length / 100) / 10).toString()} m`);
  const eighths = Math.round((8 * length) / yardMm);
  const whole = Math.floor(eighths / 8);
  const rest = eighths % 8;
  const fraction = rest === 0 ? "" : rest === 4 ? "1/2" : rest % 2 === 0 ? `${rest / 2}/4` : `${rest}/8`;
  return `${[...(whole === 0 && rest !== 0 ? [] : [whole]), ...(fraction === "" ? [] : [fraction])].join(noBreakSpace)}${noBreakSpace}yd`;
}

/** A length of thread or tape, which need not be exact: whole yards or meters, upwards. */
function aboutLength(length: Millimetres, unit: LengthUnit): string {
  const each = unit === "in" ? yardMm : 1000;
  return shopLength(mm(Math.ceil(length / each) * each), unit);
}

/** What a roll or a packet is called in a list; its size is what is printed on it. */
export function goodName(id: BattingGoodId): string {
  const [kind, size = "", soldIn = ""] = id.split("-");
  return kind === "packet"
    ? `packet, ${size.replace("x", ` × `)}${noBreakSpace}${soldIn}`
    : `roll, ${size}${noBreakSpace}${soldIn} wide`;
}

/** Width of a roll or size of a packet, in its own unit. */
const goodSize = ({ id }: BattingGood): string => {
  const [, size = "", soldIn = ""] = id.split("-");
  return `${size.replace("x", " × ")}${noBreakSpace}${soldIn}`;
};

/** What to ask for: `1 1/8 yd of a roll 90 in wide`, or `2 packets of 45 × 60 in`. */
export function boughtWords(layout: BattingLayout, unit: LengthUnit): string {
  const { good, sheets } = layout;
  if (good.kind === "roll") return `${shopLength(lengthOfRoll(layout), unit)} of a roll ${goodSize(good)} wide`;
  return `${sheets.length === 1 ? "1 packet" : `${sheets.length} packets`} of ${goodSize(good)}`;
}

/** How much of a batting to have, in one sentence for a plan. */
export const battingToHave = (name: string, layout: BattingLayout, unit: LengthUnit): string =>
  `${upperFirst(name)}: ${boughtWords(layout, unit)}.`;

export const battingToHaveShort = (layout: BattingLayout, unit: LengthUnit): string =>
  `Have ${boughtWords(layout, unit)}.`;

const rectangleWords = (width: number, height: number, step: LengthStep): string =>
  [Math.max(width, height), Math.min(width, height)]
    .map((side) => shownLength(mm(side), step))
    .join(`${noBreakSpace}×${noBreakSpace}`);

/** How much is left over, and the largest piece of it. */
export function leftWords({ used, sheets }: BattingLayout, step: LengthStep): string {
  const share = `${Math.round(100 * (1 - used))}${noBreakSpace}%`;
  const left = sheets.at(-1)?.left ?? null;
  return left === null
    ? `About ${share} of it is left over, in scraps between the pieces.`
    : `About ${share} of it is left over; the largest rectangle that stays whole is ${rectangleWords(left.width, left.height, step)}.`;
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
    title: `Layout of ${name}`,
    description: `${shapes.length === 1 ? "1 shape" : `${shapes.length} shapes`} on ${goodSize(layout.good)}.`,
    width: size(width),
    length: isRoll ? shopLength(length, unit) : size(length),
    left: left === null ? null : "left over",
  };
};

export const clothWidthName = (width: ClothWidthId, unit: LengthUnit): string => `${clothSize(width, unit)} wide`;

export const suppliesWords = {
  title: "Supplies",
  boughtAs: "Bought as",
  sizesFromMemory:
    "Sizes are from memory, except the packet of 81 × 96 in, which a pamphlet names; look at what your packet says.",
  laidOut: (step: LengthStep): string =>
    `Laid ${shownLength(mm(layingGap), step)} apart, along or across: batting has no grain.`,
  numbers: "A number is a piece in the order of pinning; 3.2 is the second layer of piece 3, from the form outward.",
  trialStrip: "the strip of the trial",
  trial: `${trialLabel} is the strip of the trial, a length for each turn.`,
  tooLarge: (names: readonly string[]): string =>
    `Too large for it: ${names.join(", ")}. Choose a larger packet, or a roll.`,
  allCut: "Every piece is cut, so no more batting is needed.",
  someCut: (count: number): string =>
    count === 1
      ? "1 piece is cut or pinned already and not counted."
      : `${count} pieces are cut or pinned already and not counted.`,
  fabric: (hasCover: boolean): string => (hasCover ? "Fabric for the cover and the arm" : "Fabric for the arm"),
  cloths: { knit: "knit, pulled by a tenth", woven: "woven fabric" } satisfies {
    readonly [kind in CoverClothKind]: string;
  },
  clothKind: "It is cut from",
  clothWidth: "Width of the fabric",
  working: "Working out the fabric…",
  clothHow: ({ isFitted, coverCount, armCount }: CoverCloth, above: string): string =>
    [
      ...(coverCount === 0
        ? ["All parts lie the same way up, along the grain."]
        : [
            `All panels lie the same way up, along the grain. Each has ${above} above the bust line, to be traced on the form and trimmed (common practice, no source).`,
          ]),
      ...(coverCount > 0 && isFitted ? ["The numbers go around from right center back over the front."] : []),
      ...(coverCount > 0 && armCount > 0 ? ["The last numbers are parts of the arm."] : []),
    ].join(" "),
  noCloth: "No fabric is needed: nothing is left to cut from it.",
  washed: "Wash the fabric first, as hot as it will ever be washed.",
  notions: "Notions",
  priceOf: (what: string, per: string): string => `Price of ${what}, for ${per}`,
  perWords: { packet: "one packet", yard: "one yard", meter: "one meter" },
  notionsPrice: "Price of all notions together",
  notPrice: (read: string): string => `“${read}” cannot be read as a price. Type a number, such as 12.50.`,
  cost: "What it costs",
  costLead: "If you type prices, they are added up here, in your currency. They stay in the fitting.",
  costSum: (sum: string): string => `Together ${sum}.`,
  costPart: (sum: string): string => `Together ${sum}, without what has no price yet.`,
} as const;

export const suppliesSheetTitle = (name: string): string => (name === "" ? "Supplies" : `Supplies for ${name}`);

/** The list of sizes that is offered in a unit: rolls of that unit, every packet, and what was chosen before. */
export const goodsOffered = (
  ids: readonly BattingGoodId[],
  unit: LengthUnit,
  chosen: BattingGoodId,
): readonly BattingGoodId[] =>
  ids.filter((id) => {
    const good = battingGood(id);
    return id === chosen || good.kind === "packet" || (good.soldIn === "in") === (unit === "in");
  });

const fabricName = (kind: CoverClothKind): string => (kind === "knit" ? "Stretch knit" : "Woven fabric");

/** How much cloth to ask for. */
export function clothSentence(
  kind: CoverClothKind,
  width: ClothWidthId,
  { rows, coverCount, armCount, isFitted }: CoverCloth,
  unit: LengthUnit,
): string {
  if (coverCount + armCount === 0) return suppliesWords.noCloth;
  const lies = rows.rows === 1 ? "in one row" : `in ${rows.rows} rows`;
  const parts = [
    ...(coverCount === 0
      ? []
      : [isFitted ? `${coverCount} panels` : "front and two backs of a cover that is pulled on"]),
    ...(armCount === 0 ? [] : [`${armCount} parts of the arm`]),
  ].join(" and the ");
  return `${clothLength(kind, width, rows.length, unit)} The ${parts} lie side by side ${lies}.`;
}

/** Which fabric, how much of it and how wide. */
export const clothLength = (kind: CoverClothKind, width: ClothWidthId, length: Millimetres, unit: LengthUnit): string =>
  `${fabricName(kind)}: ${shopLength(boughtLength(length, unit), unit)}, at least ${clothWidthName(width, unit)}.`;

/** What is written on the picture of the cloth: the number of each panel in its order around, and the sizes. */
export function clothPictureWords(cover: CoverCloth, width: ClothWidthId, unit: LengthUnit) {
  const labels = cover.rows.panels.map(({ id }) => String(1 + cover.ids.indexOf(id)));
  return [
    labels,
    {
      title: "Layout of the fabric",
      description: `${labels.length} parts, all the same way up.`,
      width: clothSize(width, unit),
      length: shopLength(boughtLength(cover.rows.length, unit), unit),
      left: null,
    },
  ] as const;
}

export const clothTooWide = (count: number): string =>
  `${count === 1 ? "1 panel is" : `${count} panels are`} wider than this fabric: take a wider one.`;

/** Everything else, one line for each; amounts of thread, pins and elastic are common practice, no source. */
export function notionLines(notions: Notions, unit: LengthUnit): readonly string[] {
  const { waistTape, opening, sewingThread, hasCover, form, arm, isArmFilled } = notions;
  const about = (length: Millimetres) => aboutLength(length, unit);
  return [
    `Pins: about ${notions.pins}, counted into the dish and counted back.`,
    `Strong thread for basting: about ${about(notions.bastingThread)}.${sewingThread === 0 ? "" : ` Sewing thread: about ${about(sewingThread)}.`}`,
    "A curved needle, and a long straight one.",
    `For the person’s lines, style tape or narrow elastic: about ${about(notions.markingElastic)}, cut into five; thread in a contrasting color to carry them out.`,
    "To mark them, an upright stick as tall as the form, with a clamp or a flag of tape as its pointer. For cutting, a dust mask.",
    `Style tape: about ${about(notions.styleTape)}, for the bust and hip lines${hasCover ? " and every seam of the cover" : ""}.`,
    ...(waistTape === null ? [] : [`Twill tape for the waist: ${shownLength(waistTape, tapeStep[unit])}.`]),
    ...formLines(form),
    ...(opening === null
      ? []
      : [`A zipper of ${shownLength(opening, tapeStep[unit])}, or lacing, for the opening at center back.`]),
    ...(arm === null ? [] : armLines(arm, unit)),
    ...(isArmFilled
      ? [`Loose fiber for the arm: about ${unit === "in" ? "5 to 9 oz" : "150 to 250 g"}, estimated from memory.`]
      : []),
  ];
}

/** What the form asks for, by what it is made of. */
function formLines({ underCover, hasDials, isWeighted }: FormNotions): readonly string[] {
  const tube = "a cut-off tee or a tube of knit.";
  return [
    ...(underCover === "needed" ? [`A snug stretch under-cover for the form: ${tube}`] : []),
    ...(underCover === "unsaid"
      ? [`A snug stretch under-cover, if the form takes no pins or is not yours: ${tube}`]
      : []),
    ...(hasDials ? ["Strong tape to fix the dials, so that none turns again."] : []),
    ...(isWeighted ? ["Weights for the base: sandbags, or a bag of rice."] : []),
  ];
}

function armLines({ tab, capCard, wristCard }: ArmNotions, unit: LengthUnit): readonly string[] {
  const size = (length: Millimetres) => shownLength(length, tapeStep[unit]);
  return [
    `For the arm’s tab: firm woven fabric, ${size(tab.length)} × ${size(tab.width)}. For its ends: firm card, an oval ${size(capCard.height)} × ${size(capCard.breadth)} and a disc ${size(wristCard.height)} across.`,
    `For hanging the arm: hook-and-loop tape, and ${unit === "in" ? "1 yd" : "80 cm"} of narrow tape for four ties.`,
  ];
}

/** What several fittings take together. */
export const classSuppliesWords = {
  add: (count: number): string => (count === 1 ? "Add up 1 fitting" : `Add up ${count} fittings`),
  working: (at: number, all: number): string => `Working out fitting ${at} of ${all}…`,
  leftOut: (names: readonly string[]): string => `Left out, because there is no plan yet: ${names.join(", ")}.`,
  tooLarge: (labels: readonly string[]): string =>
    `Too large for it: ${labels.join(", ")}. Choose a larger packet, or a roll, in that fitting.`,
  letters: (names: readonly string[]): string =>
    `The letters: ${names.join(", ")}. A number is a piece in the order of pinning, with its layer behind the point.`,
} as const;

export function classSuppliesLines(supplies: ClassSupplies, unit: LengthUnit): readonly string[] {
  const about = (length: Millimetres) => aboutLength(length, unit);
  return [
    ...supplies.cloths.map(
      ({ kind, width, covers, arms, length }) =>
        `${fabricName(kind)} for ${made(covers, arms)}: ${shopLength(length, unit)}, at least ${clothWidthName(width, unit)}.`,
    ),
    `Pins: about ${supplies.pins}.`,
    `Strong thread for basting: about ${about(supplies.bastingThread)}.${supplies.sewingThread === 0 ? "" : ` Sewing thread: about ${about(supplies.sewingThread)}.`}`,
    `Narrow elastic to mark lines: about ${about(supplies.markingElastic)}. Style tape: about ${about(supplies.styleTape)}. Twill tape for the waists: ${about(supplies.waistTape)}.`,
    ...(supplies.openings.length === 0
      ? []
      : [
          `Zippers, or lacing, for openings at center back: ${supplies.openings.map((one) => shownLength(one, tapeStep[unit])).join(", ")}.`,
        ]),
    ...counted("Snug stretch under-covers for forms", supplies.underCovers),
    ...counted("Forms with dials, for which strong tape is needed", supplies.dialed),
    ...counted("Bases to weight, with sandbags or bags of rice", supplies.weighted),
    ...counted(
      "Arms, each with firm woven fabric for the tab, firm card, ties and hook-and-loop tape",
      supplies.armsCut,
    ),
    ...(supplies.armsFilled === 0
      ? []
      : [
          `Loose fiber for arms: about ${unit === "in" ? `${5 * supplies.armsFilled} to ${9 * supplies.armsFilled} oz` : `${150 * supplies.armsFilled} to ${250 * supplies.armsFilled} g`}, estimated from memory.`,
        ]),
  ];
}

const counted = (what: string, count: number): readonly string[] => (count === 0 ? [] : [`${what}: ${count}.`]);

const made = (covers: number, arms: number): string =>
  [
    ...(covers === 0 ? [] : [covers === 1 ? "1 cover" : `${covers} covers`]),
    ...(arms === 0 ? [] : [arms === 1 ? "1 arm" : `${arms} arms`]),
  ].join(" and ");

/** A plain sum, without a currency: two digits behind the point. */
export const priceText = (sum: number): string =>
  new Intl.NumberFormat("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 }).format(sum);
