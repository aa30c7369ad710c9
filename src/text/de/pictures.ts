import type { LevelName } from "../../core/body/vocabulary";
import { atLevel, inflected } from "./grammar/levels";

export const levelWords: { readonly [level in LevelName]: string } = {
  bust: "Brust",
  underbust: "Unterbrust",
  waist: "Taille",
  highHip: "hohe Hüfte",
  fullHip: "Hüfte",
};

export const lineWords: { readonly [level in LevelName]: string } = {
  bust: "Brustlinie",
  underbust: "Unterbrustlinie",
  waist: "Taillenlinie",
  highHip: "hohe Hüftlinie",
  fullHip: "Hüftlinie",
};

export const pictureWords = {
  front: "VORN",
  back: "HINTEN",
  left: "LINKS",
  right: "RECHTS",
  sideSeam: "Seitennaht",
  form: "Büste",
  body: "Person",
  bodyEstimated: "Person (geschätzt)",
  seamMark: (length: string, towards: "front" | "back") =>
    `Markierung ${length} nach ${towards === "front" ? "vorn" : "hinten"}`,
  centreFront: "vordere Mitte",
  centreBack: "hintere Mitte",
  leftSeam: "linke Seitennaht",
  rightSeam: "rechte Seitennaht",
  frontView: "von vorn",
  backView: "von hinten",
  sideView: "von der linken Seite",
  atLine: (width: string, level: LevelName) => `${width} ${atLevel[level]}`,
  atEnd: (distance: string, side: "above" | "below", level: LevelName) =>
    `${distance} ${side === "above" ? "über" : "unter"} der ${inflected(lineWords[level])}`,
  sideOf: (side: "above" | "below", level: LevelName) =>
    `${side === "above" ? "über" : "unter"} der ${inflected(levelWords[level])}`,
  layerOf: (name: string, layer: number, layers: number) => `${name}, Lage ${layer} von ${layers}`,
  bought: "fertig gekauft, wird nicht zugeschnitten",
  edges: (top: string, lower: string) => `Oberkante ${top}, Unterkante ${lower}`,
  darts: (from: LevelName | "top" | "bottom", count: number, width: string, depth: string) =>
    from === "top" || from === "bottom"
      ? `${from === "top" ? "Oberkante" : "Unterkante"}: ${count} Abnäher ${width} × ${depth}`
      : `${levelWords[from]}: ${count} Abnäher ${width} × ${depth} nach beiden Seiten`,
  topToLower: (height: string) => `${height} von der Ober- zur Unterkante`,
  cutShape: (isRound: boolean, height: string) =>
    `${isRound ? "Ein Streifen, der ganz herumgeht" : "Ein Zuschnitt"}, ${height} von der Ober- zur Unterkante`,
  wide: (width: string) => `${width} breit`,
  besideCentre: (right: string, left: string) =>
    `von der Mitte aus ${right} zur rechten und ${left} zur linken Seite der Person`,
  butt: "Kanten stoßen aneinander, nicht überlappen",
  stripMiddle: "Linie in der Mitte: nahe der rechten Seitennaht",
  linesDown: (first: string) => `unter der Oberkante: ${first}`,
  lineDown: (level: LevelName, distance: string) => `${levelWords[level]} ${distance}`,
  diameter: (length: string) => `${length} Durchmesser`,
  testSquare: (length: string) => `dieses Quadrat misst ${length} in jeder Richtung`,
  notRead: "noch nicht gemessen",
  layerAdds: "Was eine Lage unter dem Maßband ausmacht",
  wanted: "Person",
  now: "jetzt",
  packet: "Anfangswert",
  fromTape: "von Ihrem Maßband",
  cover: {
    pinSides: "Die bezogene Büste von vorn. Der Stoff ist an beiden Seiten abgesteckt, dicht an der Büste.",
    closed: "Die bezogene Büste von vorn, mit vorderer Mitte und Teilungsnähten.",
    read: "Die bezogene Büste von vorn, das Maßband liegt um die Linie, die gemessen wird.",
    hem: "Die Unterkante der bezogenen Büste, der Saum ist eingeschlagen und genäht.",
    waistTape:
      "Die Taille der bezogenen Büste von hinten; das Taillenband ist aufgenäht, ein Ende liegt an der hinteren Mitte über dem anderen.",
    lines: "Die bezogene Büste von vorn, mit Markierband auf Brust, Taille, Hüfte und vorderer Mitte.",
    bag: "Eine Staubhülle über der ganzen Büste, über dem Hals zusammengezogen; der Ständer schaut unten heraus.",
  },
  uncovered: {
    closed: "Die gepolsterte Büste von vorn, mit vorderer Mitte und Teilungslinien.",
    waistTape:
      "Die Taille der gepolsterten Büste von hinten; das Taillenband ist aufgenäht, ein Ende liegt an der hinteren Mitte über dem anderen.",
    lines: "Die gepolsterte Büste von vorn, mit Markierband auf Brust, Taille, Hüfte und vorderer Mitte.",
  },
  standIn: {
    form: "Eine Schneiderbüste, kleiner als der Umriss der Person",
    padding: "Vlies, Polster für Polster aufgesteckt",
    covered: "Bezogen: Das Maßband zeigt dasselbe wie an der Person",
  },
} as const;

export const landmarkWords = {
  nape: "Nacken",
  throat: "Halsgrube",
  neckSide: "Halspunkt",
  shoulderPoint: "Schulterpunkt",
  apex: "Brustpunkt",
  armCrease: "Armfalte",
  underbust: "unter der Brust",
  waist: "Taille",
  highHip: "hohe Hüfte",
  hipBone: "Hüftknochen",
  fullHip: "Hüfte",
  sideSeam: "Seitennaht",
  centreFront: "vordere Mitte",
  centreBack: "hintere Mitte",
  midArm: "halbe Höhe",
  elbow: "Ellenbogen",
  wrist: "Handgelenk",
  lowerEdge: "Unterkante",
  lowerBreast: "drei Viertel abwärts",
  upperChest: "unter den Achseln",
  armholeTop: "Oberkante",
  armholeBottom: "unterste Kante",
  armholeFront: "vordere Kante",
  armholeBack: "hintere Kante",
} as const;
