import type { LevelName } from "../../core/body/vocabulary";
import type { MeasurementText } from "../measurementText";
import { inflected } from "./grammar/levels";
import { lineWords } from "./pictures";

const names: { readonly [level in LevelName]: string } = {
  bust: "Brust",
  underbust: "Unterbrust",
  waist: "Taille",
  highHip: "Hohe Hüfte",
  fullHip: "Hüfte",
};

/** In the dative, behind `von` or `an`, and in the nominative. */
const landmarks: { readonly [level in LevelName]: { readonly dative: string; readonly nominative: string } } = {
  bust: { dative: "der stärksten Stelle der Brust", nominative: "Die stärkste Stelle der Brust" },
  underbust: { dative: "dem Gummiband unter der Brust", nominative: "Das Gummiband unter der Brust" },
  waist: { dative: "dem Taillengummi", nominative: "Das Taillengummi" },
  highHip: { dative: "dem Gummiband an der hohen Hüfte", nominative: "Das Gummiband an der hohen Hüfte" },
  fullHip: { dative: "dem Gummiband an der Hüfte", nominative: "Das Gummiband an der Hüfte" },
};

const sameFloor =
  "Höhen über zwei verschiedenen Böden, oder der Nacken fehlt: Ohne ihn lässt sich keine Höhe verwenden.";

const napeBone = "Der unterste Halswirbel, der vorsteht, wenn der Kopf gebeugt ist.";

const ofLine = (level: LevelName): string => `der ${inflected(lineWords[level])}`;

export const heightText = (level: LevelName): MeasurementText => ({
  label: `${names[level]}, Höhe über dem Boden`,
  what: `Wie hoch die ${lineWords[level]} über dem Boden liegt, senkrecht gemessen.`,
  onBody: `Kleben Sie ein Maßband an einen Türrahmen, die Null am Boden. Die Person steht seitlich daneben und hebt den Arm. Führen Sie einen rechten Winkel von ${landmarks[level].dative} zum Maßband und lesen Sie ab.`,
  alone: `Kleben Sie ein Fähnchen aus ablösbarem Klebeband auf Höhe von ${landmarks[level].dative} an einen Türrahmen und prüfen Sie im Spiegel, ob es waagerecht sitzt. Dann zur Seite treten und messen.`,
  onForm: `Stellen Sie ein Lineal oder einen Stab senkrecht neben die Büste und markieren Sie daran die Höhe ${ofLine(level)}. Messen Sie die Höhe der Markierung; auch ein Tisch dient als Boden, wenn alle Höhen von ihm aus gemessen sind.`,
  landmark: `${landmarks[level].nominative}, an der Seite.`,
  mistake: sameFloor,
});

export const belowNapeText = (level: LevelName): MeasurementText => ({
  label: `${names[level]}, unter dem Nacken`,
  what: `Wie weit die ${lineWords[level]} unter dem Nacken liegt, senkrecht gemessen.`,
  onBody: `Lassen Sie ein Maßband vom Nacken senkrecht hängen, nicht am Rücken entlang. Halten Sie ein Lineal waagerecht von ${landmarks[level].dative} zum Maßband und lesen Sie ab.`,
  alone: `Befestigen Sie das Maßband am Nacken am Kragen und lassen Sie es frei hängen. Halten Sie ein Lineal waagerecht an die Stelle und lesen Sie in zwei Spiegeln ab.`,
  onForm: `Messen Sie, wie hoch der Nacken der Büste und ihre ${lineWords[level]} über dem Boden liegen. Der Unterschied ist dieses Maß.`,
  landmark: napeBone,
  mistake: "Das Maßband folgt dem Rücken: Dann zeigt es mehr als senkrecht gemessen.",
});

export const depthText = (level: LevelName): MeasurementText => ({
  label: `${names[level]}, Tiefe von vorn nach hinten`,
  what: `Wie weit es auf ${ofLine(level)} von vorn nach hinten ist, gerade hindurch.`,
  onBody: `Halten Sie zwei Bücher flach auf Höhe ${ofLine(level)}, eines vorn und eines hinten, den Rücken nach innen, sodass sie gerade anliegen. Messen Sie gerade von einem zum anderen.`,
  alone:
    "Stellen Sie sich mit dem Rücken leicht an eine Wand und halten Sie ein Buch flach vorn an. Treten Sie weg und messen Sie von der Wand bis zum Buch.",
  onForm: `Halten Sie zwei Bücher flach auf Höhe ${ofLine(level)} an die Büste, eines vorn und eines hinten. Messen Sie gerade von einem zum anderen.`,
  landmark: "Die Stellen, die auf dieser Höhe vorn und hinten am weitesten vorstehen.",
  mistake: "Die Bücher stehen schräg oder drücken ein.",
});

export const lengthPlaceTexts = {
  napeHeight: {
    label: "Nacken, Höhe über dem Boden",
    what: "Wie hoch der unterste Halswirbel über dem Boden liegt: Von ihm aus zählen alle anderen Höhen.",
    onBody:
      "Die Person beugt den Kopf, damit Sie den Wirbel finden, und hält ihn dann wieder gerade. Führen Sie einen rechten Winkel vom Wirbel zu einem Maßband, das am Boden steht, und lesen Sie ab.",
    alone:
      "Stellen Sie sich mit dem Rücken an einen Türrahmen, legen Sie ein Lineal waagerecht über den Wirbel an den Rahmen und zeichnen Sie an. Dann wegtreten und messen.",
    onForm:
      "Messen Sie vom Boden senkrecht bis zur Halsnaht der Büste in der hinteren Mitte. Auch ein Tisch dient als Boden, wenn alle Höhen von ihm aus gemessen sind.",
    landmark: napeBone,
    mistake: "Das Maßband folgt dem Rücken, statt senkrecht zu laufen.",
  },
  lowerEdgeBelowNape: {
    label: "Unterkante der Büste, unter dem Nacken",
    what: "Wie weit die Unterkante der Büste unter ihrem Nacken liegt, senkrecht gemessen, dort, wo sie am höchsten hinaufreicht.",
    onBody: "Ein Körper hat keine Unterkante. Lassen Sie es weg.",
    alone: "Ein Körper hat keine Unterkante. Lassen Sie es weg.",
    onForm:
      "Messen Sie, wie hoch der Nacken der Büste und ihre Unterkante über dem Boden liegen. Der Unterschied ist dieses Maß.",
    landmark: "Die Unterkante des festen Teils, ohne Rock oder Gestell.",
    mistake: "Ein Stoffrock unter der Büste wird mitgemessen.",
  },
  apexToUnderbust: {
    label: "Brust bis Unterbrust, senkrecht",
    what: "Wie weit die Unterbrustlinie unter der stärksten Stelle der Brust liegt, senkrecht gemessen.",
    onBody:
      "Halten Sie ein Lineal senkrecht neben die Brust, das Ende am Gummiband unter der Brust. Lesen Sie auf Höhe der stärksten Stelle ab.",
    alone: "Halten Sie das Lineal vor dem Spiegel senkrecht und lesen Sie an der stärksten Stelle ab.",
    onForm:
      "Halten Sie ein Lineal senkrecht neben die Brust der Büste, das Ende an der Unterbrustlinie. Lesen Sie an der stärksten Stelle ab.",
    landmark: "Die stärkste Stelle der Brust und die Falte darunter.",
    mistake: "Das Maßband folgt der Rundung der Brust.",
  },
  lowerBreastGirth: {
    label: "Untere Brust, rundum",
    what: "Rundum auf drei Vierteln des Wegs von der Brustlinie hinab zur Unterbrustlinie.",
    onBody:
      "Suchen Sie die Stelle auf drei Vierteln des Wegs von der Brustlinie hinab zur Unterbrustlinie. Legen Sie das Maßband dort waagerecht um, anliegend, ohne einzudrücken.",
    alone:
      "Markieren Sie die Stelle mit ablösbarem Klebeband und prüfen Sie im Spiegel, ob das Maßband waagerecht bleibt.",
    onForm:
      "Legen Sie das Maßband waagerecht um die Büste, auf drei Vierteln des Wegs von ihrer Brustlinie hinab zur Unterbrustlinie. Lesen Sie ab, wo die Enden sich treffen.",
    landmark: "Drei Viertel des Wegs von der stärksten Stelle zur Falte unter der Brust.",
    mistake: "Das Maßband rutscht in die Falte.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
