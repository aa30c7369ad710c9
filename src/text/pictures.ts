import type { LevelName } from "../core/body/vocabulary";

/** The words inside pictures: short, in the trade's own terms, in one place. Left and right are always the wearer's. */
export const pictureWords = {
  front: "FRONT",
  back: "BACK",
  left: "LEFT",
  right: "RIGHT",
  sideSeam: "side seam",
  form: "form",
  body: "person",
  bodyEstimated: "person (estimated)",
  seamMark: (length: string, towards: "front" | "back") => `mark moves ${length} to the ${towards}`,
  centreFront: "center front",
  centreBack: "center back",
  leftSeam: "left side seam",
  rightSeam: "right side seam",
  frontView: "from the front",
  backView: "from the back",
  sideView: "from the left side",
  atLine: (width: string, level: LevelName) => `${width} at the ${levelWords[level]}`,
  atEnd: (distance: string, side: "above" | "below", level: LevelName) =>
    `${distance} ${side} the ${levelWords[level]}`,
  /** The same in two lines: the distance stands above. */
  sideOf: (side: "above" | "below", level: LevelName) => `${side} the ${levelWords[level]}`,
  layerOf: (name: string, layer: number, layers: number) => `${name}, layer ${layer} of ${layers}`,
  bought: "ready-made, not cut",
  edges: (top: string, lower: string) => `top edge ${top}, lower edge ${lower}`,
  /** Darts of a strip: at an edge from the edge, at a line to both sides of it. */
  darts: (from: LevelName | "top" | "bottom", count: number, width: string, depth: string) =>
    from === "top" || from === "bottom"
      ? `${from === "top" ? "top" : "lower"} edge: ${count} darts ${width} × ${depth}`
      : `${levelWords[from]}: ${count} darts ${width} × ${depth} each way`,
  topToLower: (height: string) => `${height} from top to lower edge`,
  cutShape: (isRound: boolean, height: string) =>
    `${isRound ? "A strip that goes all the way around" : "A panel"}, ${height} from top to lower edge`,
  wide: (width: string) => `${width} wide`,
  besideCentre: (right: string, left: string) =>
    `${right} to the wearer’s right and ${left} to the left of the center line`,
  butt: "edges meet, no overlap",
  stripMiddle: "line in the middle: near the right side seam",
  /** The first of the places where the level lines cross a cut. */
  linesDown: (first: string) => `below the top edge: ${first}`,
  lineDown: (level: LevelName, distance: string) => `${levelWords[level]} ${distance}`,
  diameter: (length: string) => `${length} across`,
  testSquare: (length: string) => `this square measures ${length} each way`,
  notRead: "not measured yet",
  layerAdds: "What one layer adds under the tape",
  wanted: "person",
  now: "now",
  packet: "starting figure",
  fromTape: "from your tape",
  /** The covered form at the steps over the padding. */
  cover: {
    pinSides:
      "The covered form from the front. The fabric is pinched out along both sides and pinned close to the form.",
    closed: "The covered form from the front, with its center line and princess seams.",
    read: "The covered form from the front, with the measuring tape around the line that is measured.",
    hem: "The lower edge of the covered form, with the hem turned under and stitched.",
    waistTape:
      "The waist of the covered form from the back, with the waist tape sewn on, one end over the other at center back.",
    lines: "The covered form from the front, with style tape along bust, waist, full hip and center front.",
    bag: "A dust bag over the whole form, gathered above its neck; the base looks out below.",
  },
  /** The same where there is no cover. */
  uncovered: {
    closed: "The padded form from the front, with its center line and princess lines.",
    waistTape:
      "The waist of the padded form from the back, with the waist tape sewn on, one end over the other at center back.",
    lines: "The padded form from the front, with style tape along bust, waist, full hip and center front.",
  },
  standIn: {
    form: "A dress form, smaller than the person’s outline",
    padding: "Batting pinned on, piece by piece",
    covered: "Covered: the tape reads as on the person",
  },
} as const;

export const levelWords: { readonly [level in LevelName]: string } = {
  bust: "bust",
  underbust: "underbust",
  waist: "waist",
  highHip: "high hip",
  fullHip: "full hip",
};

/** The level lines inside a sentence: "the waistline", "the full hip line". */
export const lineWords: { readonly [level in LevelName]: string } = {
  bust: "bust line",
  underbust: "underbust line",
  waist: "waistline",
  highHip: "high hip line",
  fullHip: "full hip line",
};

/** Landmarks named in the measuring figures. */
export const landmarkWords = {
  nape: "nape",
  throat: "throat hollow",
  neckSide: "side neck point",
  shoulderPoint: "shoulder tip",
  apex: "apex",
  armCrease: "arm crease",
  underbust: "under the bust",
  waist: "waist",
  highHip: "high hip",
  hipBone: "hip bone",
  fullHip: "full hip",
  sideSeam: "side seam",
  centreFront: "center front",
  centreBack: "center back",
  midArm: "halfway",
  elbow: "elbow",
  wrist: "wrist bone",
  lowerEdge: "lower edge",
  lowerBreast: "three quarters down",
  upperChest: "under the arms",
  armholeTop: "top edge",
  armholeBottom: "lowest edge",
  armholeFront: "front edge",
  armholeBack: "back edge",
} as const;
