import type { LevelName } from "../../core/body/vocabulary";

/** The words inside pictures: short, in the trade's own terms, in one place. Left and right are always the wearer's. */
export const pictureWords = {
  front: "FRONT",
  back: "BACK",
  left: "LEFT",
  right: "RIGHT",
  sideSeam: "side seam",
  form: "form",
  body: "body",
  bodyEstimated: "body (estimated)",
  seamMark: (length: string, towards: "front" | "back") => `mark moves ${length} to the ${towards}`,
  centreFront: "centre front",
  centreBack: "centre back",
  leftSeam: "left side seam",
  rightSeam: "right side seam",
  frontView: "from the front",
  backView: "from the back",
  sideView: "from the left side",
  notMeasured: "drawn by rule, not measured",
  atTop: (width: string) => `${width} at the top edge`,
  atLower: (width: string) => `${width} at the lower edge`,
  below: (width: string, down: string) => `${width}, ${down} down`,
  topToLower: (height: string) => `${height} from top to lower edge`,
  cutShape: (isRound: boolean, height: string) =>
    `${isRound ? "A strip that goes all the way round" : "A panel"}, ${height} from top to lower edge`,
  wide: (width: string) => `${width} wide`,
  besideCentre: (right: string, left: string) =>
    `${right} to the wearer’s right and ${left} to the left of the centre line`,
  spokenBelow: (width: string, down: string) => `${width} ${down} below the top edge`,
  fold: "cut on the fold",
  centreLine: "centre line",
  butt: "ends butt, no overlap",
  feather: (length: string) => `pull thin over ${length}`,
  diameter: (length: string) => `${length} across`,
  testSquare: (length: string) => `this square measures ${length} each way`,
  depth: (from: string | null, to: string | null) =>
    from === null ? (to === null ? "any depth" : `up to ${to}`) : to === null ? `over ${from}` : `${from} to ${to}`,
  about: (length: string) => `about ${length}`,
  notRead: "not read yet",
  worth: "What one layer is worth",
  wanted: "wanted",
  now: "now",
  packet: "believed before",
  believed: "believed now",
  standIn: {
    form: "A dress form, smaller than the body round it",
    padding: "Batting pinned on where the body is fuller",
    covered: "Covered: the tape reads as on the body",
  },
} as const;

export const levelWords: { readonly [level in LevelName]: string } = {
  bust: "bust",
  underbust: "underbust",
  waist: "waist",
  highHip: "high hip",
  fullHip: "full hip",
};

/** Landmarks named in the measuring figures. */
export const landmarkWords = {
  nape: "nape",
  throat: "throat hollow",
  neckSide: "neck side",
  shoulderPoint: "shoulder end",
  apex: "apex",
  armCrease: "arm crease",
  underbust: "under the bust",
  waist: "waist",
  highHip: "high hip",
  hipBone: "hip bone",
  fullHip: "full hip",
  sideSeam: "side seam",
  centreFront: "centre front",
  centreBack: "centre back",
  midArm: "halfway",
  elbow: "elbow",
  wrist: "wrist bone",
} as const;
