import { upperFirst } from "../upperFirst";
import type { PatternTitles } from "../../app/patterns/fittingPatterns";
import { coverMatters } from "../../core/cover/coverMatters";
import type { CoverPanelName } from "../../core/cover/coverPanels";
import type { FittedCover } from "../../core/cover/fittedCover";
import type { LengthStep } from "../../core/lengthText";
import { aboveLayerWords } from "./above";
import { armPartWords } from "./arm";
import { battingName } from "./grammar/battingName";
import { pictureWords } from "./pictures";
import { featherWords } from "./pieces";
import { pieceName, planWords } from "./plan";

/** The command alone says these, and it speaks English. */
export { patternProblems } from "../patterns";

export const patternTitles = (step: LengthStep): PatternTitles => ({
  layer: (piece, layer, levels, batting) => ({
    title:
      piece.layers.length === 1 ? pieceName(piece) : pictureWords.layerOf(pieceName(piece), layer, piece.layers.length),
    says: [
      `1-mal zuschneiden (${battingName(batting)}).`,
      `${upperFirst(featherWords(piece.layers[layer - 1]?.feather ?? 0, step))}.`,
      `${upperFirst(planWords(step).piecePlace(piece, levels))}.`,
    ],
  }),
  panel: panelWords,
  armPart: armPartWords,
  above: (build, layer, batting) => aboveLayerWords(build, layer, battingName(batting), step),
});

export const panelNames: { readonly [name in CoverPanelName]: string } = {
  rightCenterBack: "mittleres Rückenteil rechts",
  rightSideBack: "seitliches Rückenteil rechts",
  rightSideFront: "seitliches Vorderteil rechts",
  rightSideFrontOuter: "seitliches Vorderteil rechts, außen",
  rightSideFrontInner: "seitliches Vorderteil rechts, innen",
  rightCenterFront: "mittleres Vorderteil rechts",
  leftCenterFront: "mittleres Vorderteil links",
  leftSideFrontInner: "seitliches Vorderteil links, innen",
  leftSideFrontOuter: "seitliches Vorderteil links, außen",
  leftSideFront: "seitliches Vorderteil links",
  leftSideBack: "seitliches Rückenteil links",
  leftCenterBack: "mittleres Rückenteil links",
};

function panelWords(
  name: CoverPanelName,
  cover: FittedCover,
): { readonly title: string; readonly says: readonly string[] } {
  const { cloth } = cover;
  const from =
    cloth.kind === "knit"
      ? `1-mal aus Maschenware zuschneiden. Sie wird um ${Math.round(100 * cloth.stretch)} % gedehnt über die Büste gezogen.`
      : "1-mal aus Webstoff zuschneiden, den Pfeil im Fadenlauf.";
  const isTied = coverMatters(cover).some(({ kind }) => kind === "tieUnderbust");
  return {
    title: `Bezug, ${panelNames[name]}`,
    says: [
      from,
      "Auf der durchgezogenen Linie schneiden, auf der gestrichelten nähen. Oben ist die Brustlinie: Darüber Stoff stehen lassen, und den Rest auf der Büste anzeichnen.",
      ...(isTied ? ["Über dem Bezug an der Unterbrustlinie schmales Gummiband umbinden und dann annähen."] : []),
    ],
  };
}

export const patternWords = {
  title: "Schnittteile in wahrer Größe",
  measureFirst: ["Diese nachmessen,", "dann erst schneiden."],
  inchSquare: "Durchgezogenes Quadrat: 4 in je Seite.",
  metricSquare: "Gestricheltes Quadrat: 100 mm je Seite.",
  howTo: [
    "Mit 100 % drucken, nicht an die Seite angepasst.",
    "Jedes Teil hat eigene Seiten, A1 oben links.",
    "Von der nächsten Seite den linken und den",
    "oberen Rand abschneiden, auf den Streifen der",
    "vorigen legen: Die Kreise a bis d treffen sich.",
  ],
  pagesOf: (title: string, pages: number) => `${title}: ${pages === 1 ? "1 Seite" : `${pages} Seiten`}`,
  layOn: (page: string) => `Seite ${page} auf diesen Streifen legen`,
  pageOf: (title: string, tile: string, page: number, pages: number) =>
    `${title}, Seite ${tile} (${page} von ${pages} Seiten)`,
} as const;

export const patternScreenWords = {
  title: "Schnittteile in wahrer Größe",
  lead: (hasCover: boolean): string =>
    `Zum Ausschneiden: jede Lage Vlies${hasCover ? ", die Teile eines Bezugs" : ""} und, sobald der Arm gemessen ist, ein gepolsterter Arm. Messen Sie die beiden Quadrate auf der ersten Seite nach, bevor Sie schneiden.`,
  cloth: (hasCover: boolean): string =>
    hasCover ? "Der Bezug wird zugeschnitten aus" : "Der Arm wird zugeschnitten aus",
  cloths: {
    knit: "Maschenware, gedehnt über die Büste gezogen",
    woven: "Webstoff",
  },
  knitNote:
    "Ziehen Sie die Maschenware so stark, wie der Bezug ziehen wird: Sie muss mindestens doppelt so viel nachgeben, wie der Bezug gedehnt wird, ein Zehntel, wenn Sie sie nicht ausprobiert haben.",
  files: {
    letter: "Seiten zum Zusammenkleben, Letter",
    a4: "Seiten zum Zusammenkleben, A4",
    sheet: "Ein Bogen für eine Rolle von 36 in",
    sheetA0: "Ein Bogen für eine Rolle von 841 mm (A0)",
    svg: "Zeichnung (SVG)",
    dxf: "Zeichnung für einen Schneideplotter (DXF)",
  },
  what: "Was gezeichnet wird",
  groups: { batting: "Lagen Vlies", cover: "der Bezug", arm: "der Arm" },
  coverLater: "Schneiden Sie den Bezug erst zu, wenn das Polstern fertig ist: Bis dahin ändern sich seine Teile noch.",
  made: (pages: number | null): string =>
    pages === null
      ? "Die Schnittteile sind gezeichnet."
      : `Die Schnittteile sind gezeichnet: ${pages} Seiten zum Zusammenkleben.`,
  making: "Die Schnittteile werden gezeichnet…",
  failed:
    "Die Schnittteile ließen sich nicht zeichnen. Vielleicht ist die Seite nur zum Teil geladen: Laden Sie sie neu, und versuchen Sie es noch einmal.",
} as const;
