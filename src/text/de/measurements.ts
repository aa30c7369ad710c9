import type { Improvement } from "../../core/body/measurementFacts";
import {
  type ByLevel,
  type ByMeasurement,
  type LengthName,
  type LevelName,
  type LevelReadingName,
  lengthNames,
  levelNames,
  levelReadingNames,
  type MeasurementName,
  type tapeReadingNames,
} from "../../core/body/vocabulary";
import type { MeasurementText } from "../measurementText";
import { armholeTexts } from "./armholeTexts";
import { inflected } from "./grammar/levels";
import { belowNapeText, depthText, heightText, lengthPlaceTexts } from "./pageTexts";
import { lineWords } from "./pictures";
import { upperChestTexts } from "./upperChestTexts";

export const improvementText: { readonly [improvement in Improvement]: string } = {
  wholePlan: "Damit beginnt der Plan.",
  betweenLevels: "Formt das Polster zwischen den Linien darüber und darunter.",
  frontAndBack: "Verteilt das Polster auf vorn und hinten.",
  leftAndRight: "Polstert jede Seite für sich.",
  sectionShape: "Verteilt das Polster nach vorn, nach hinten oder zu den Seiten.",
  apexPlace: "Legt den Brustpunkt auf die richtige Höhe und Weite.",
  linePlaces: "Legt jede Linie dorthin, wo die Person sie hat: Ein Maßband über dem Körper kann das nicht sagen.",
  levelHeights: "Legt jede Linie auf die Höhe der Person.",
  waistTilt: "Zeigt, ob die Taille vorn oder hinten tiefer liegt.",
  upperChest: "Formt die Oberbrust, zwischen Brust und Schultern.",
  shoulderMatch: "Baut jede Schulter auf oder zeigt, dass die der Büste nicht taugt.",
  backMatch: "Baut den oberen Rücken auf oder zeigt, dass der der Büste nicht taugt.",
  neckMatch: "Baut den Hals auf oder zeigt, dass der der Büste nicht taugt.",
  arm: "Nur für einen gepolsterten Arm.",
  cover: "Nur für den Bezug.",
};

const girthTexts: ByLevel<MeasurementText> = {
  bust: {
    label: "Brustumfang",
    what: "Rundum über die stärkste Stelle der Brust, über dem BH, wenn einer getragen wird.",
    onBody:
      "Führen Sie das Maßband dicht unter den Achseln durch, gerade über den Rücken und vorn über die stärkste Stelle. Lesen Sie nach ruhigem Ausatmen ab, die Arme hängen.",
    alone: "Drehen Sie sich seitlich zum Spiegel und prüfen Sie, ob das Maßband hinten nicht herunterrutscht.",
    onForm:
      "Legen Sie das Maßband waagerecht über die stärkste Stelle der Brust und gerade über den Rücken der Büste. Lesen Sie an einer Seitennaht ab, wo die Enden sich treffen.",
    landmark: "Der Brustpunkt: die Stelle der Brust, die von der Seite gesehen am weitesten vorsteht.",
    mistake: "Das Maßband hängt hinten durch und zeigt zu viel.",
  },
  underbust: {
    label: "Unterbrustumfang",
    what: "Rundum direkt unter der Brust, wo das Unterbrustband des BHs sitzt.",
    onBody:
      "Legen Sie das Maßband waagerecht auf die Rippen direkt unter der Brust, über den BH, wenn einer getragen wird. Ziehen Sie es an, bis es anliegt, und lesen Sie nach ruhigem Ausatmen ab.",
    alone: "Prüfen Sie im Spiegel, ob das Maßband hinten so hoch liegt wie vorn.",
    onForm:
      "Legen Sie das Maßband waagerecht direkt unter die Brust der Büste, wo sie einspringt. Hat sie dort keine Falte, nehmen Sie den unteren Rand der Brustwölbung.",
    landmark: "Die Falte unter der Brust, wo sie auf die Rippen trifft.",
    mistake: "Wer beim Ablesen tief einatmet und die Luft anhält, misst zu viel.",
  },
  waist: {
    label: "Taillenumfang",
    what: "Rundum in der Taille, wo sich ein schmales Gummiband von selbst hinlegt.",
    onBody:
      "Binden Sie ein schmales Gummiband um die Mitte und lassen Sie es sich setzen; es muss nicht dort sein, wo man sich beugt. Messen Sie darüber, anliegend, aber nicht eng, ohne den Bauch einzuziehen.",
    alone:
      "Stellen Sie sich vor den Spiegel und schauen Sie geradeaus, während das Maßband sich setzt. Erst dann auf die Zahl hinunterschauen.",
    onForm:
      "Messen Sie auf der Taillennaht der Büste oder an ihrer engsten Stelle. Binden Sie dort ein Gummiband um, denn von ihm aus zählen die Höhen.",
    landmark: "Meist an der Seite mitten zwischen der untersten Rippe und dem oberen Rand des Hüftknochens.",
    mistake: "Die Luft anhalten, oder den Hosenbund für die Taille nehmen.",
  },
  highHip: {
    label: "Umfang hohe Hüfte",
    what: "Rundum auf halbem Weg zwischen Taille und Hüfte, vorn über die Hüftknochen.",
    onBody:
      "Messen Sie vom Taillengummi den halben Weg hinab zur Hüfte und legen Sie das Maßband dort waagerecht um. Lassen Sie es über den Bauch laufen, wie er ist.",
    alone:
      "Halten Sie den Anfang des Maßbands an eine Seite, drehen Sie sich einmal vor dem Spiegel und prüfen Sie, ob es waagerecht bleibt.",
    onForm:
      "Messen Sie auf halbem Weg zwischen Taille und Hüfte der Büste, waagerecht rundum. Zeichnen Sie die Linie an, denn dort wird das Polster geprüft.",
    landmark: "Knapp unter den vorderen Spitzen der Hüftknochen, etwa eine Handbreit unter der Taille.",
    mistake: "Das Maßband rutscht an den Seiten über die Hüftknochen hinauf.",
  },
  fullHip: {
    label: "Hüftumfang",
    what: "Rundum über die stärkste Stelle des Gesäßes.",
    onBody:
      "Die Person steht mit geschlossenen Füßen; suchen Sie von der Seite die Stelle, die am weitesten nach hinten reicht. Legen Sie das Maßband dort waagerecht um und ziehen Sie es an, bis es gerade anliegt.",
    alone:
      "Suchen Sie die Stelle zuerst seitlich vor dem Spiegel und markieren Sie sie mit ablösbarem Klebeband auf der Kleidung.",
    onForm:
      "Suchen Sie die stärkste Stelle der Büste von der Seite und messen Sie dort waagerecht rundum. Endet die Büste darüber, messen Sie an ihrer Unterkante und geben Sie an, wie weit unter der Taille das ist.",
    landmark: "Die Stelle des Gesäßes, die von der Seite gesehen am weitesten nach hinten reicht.",
    mistake: "Die Füße auseinander, oder Geldbörse und Schlüssel in der Gesäßtasche.",
  },
};

/** What each stretch is called behind the level, and how the tape runs there. */
const sides = {
  FrontArc: {
    side: "vorn",
    across: "über die Vorderseite, von Seitennaht zu Seitennaht",
    from: "von der linken Markierung über die Vorderseite zur rechten",
  },
  BackArc: {
    side: "hinten",
    across: "über die Rückseite, von Seitennaht zu Seitennaht",
    from: "von der rechten Markierung über die Rückseite zur linken",
  },
  LeftFrontArc: {
    side: "vorn links",
    across: "von der vorderen Mitte zur linken Seitennaht",
    from: "von der vorderen Mitte zur linken Markierung",
  },
  RightFrontArc: {
    side: "vorn rechts",
    across: "von der vorderen Mitte zur rechten Seitennaht",
    from: "von der vorderen Mitte zur rechten Markierung",
  },
  LeftBackArc: {
    side: "hinten links",
    across: "von der hinteren Mitte zur linken Seitennaht",
    from: "von der hinteren Mitte zur linken Markierung",
  },
  RightBackArc: {
    side: "hinten rechts",
    across: "von der hinteren Mitte zur rechten Seitennaht",
    from: "von der hinteren Mitte zur rechten Markierung",
  },
} as const satisfies { readonly [reading in Exclude<(typeof tapeReadingNames)[number], "Girth">]: object };

const levelLabels: ByLevel<string> = {
  bust: "Brust",
  underbust: "Unterbrust",
  waist: "Taille",
  highHip: "Hohe Hüfte",
  fullHip: "Hüfte",
};

const ofLine = (level: LevelName): string => `der ${inflected(lineWords[level])}`;

function levelText(level: LevelName, reading: LevelReadingName): MeasurementText {
  if (reading === "Girth") return girthTexts[level];
  if (reading === "Depth") return depthText(level);
  if (reading === "BelowNape") return belowNapeText(level);
  if (reading === "Height") return heightText(level);
  return reading === "Breadth" ? breadthText(level) : arcText(level, reading);
}

function arcText(level: LevelName, reading: keyof typeof sides): MeasurementText {
  const { side, across, from } = sides[reading];
  const isWhole = reading === "FrontArc" || reading === "BackArc";
  const isFront = reading.includes("Front");
  const center = isFront ? "die vordere Mitte" : "die hintere Mitte";
  return {
    label: `${levelLabels[level]} ${side}`,
    what: `Die ${lineWords[level]} ${across}.`,
    onBody: `Markieren Sie jede Seite senkrecht unter der Mitte der Achsel, mit ablösbarem Klebeband auf der Kleidung${isWhole ? "" : `, und dazu ${center}`}. Legen Sie das Maßband waagerecht ${from}, so anliegend wie rundum.`,
    alone:
      "Setzen Sie die Markierungen seitlich vor dem Spiegel. Halten Sie dann den Anfang des Maßbands an die eine und lesen Sie an der anderen ab.",
    onForm: `Messen Sie auf ${ofLine(level)} ${across}. Hat die Büste keine Seitennaht, zeichnen Sie zuerst eine senkrechte Linie unter der Mitte des Armlochs an.`,
    landmark: `Die Seite verläuft senkrecht unter der Mitte der Achsel${isWhole ? "" : `; ${center} verläuft über ${isFront ? "den Nabel" : "die Wirbelsäule"}`}.`,
    mistake: isWhole
      ? "Die Markierungen wandern nach vorn: Vorn und hinten zusammen müssen den Umfang ergeben."
      : "Bis zum letzten Knopf statt bis zur Mitte gemessen: Links und rechts zusammen müssen das Ganze ergeben.",
  };
}

const breadthText = (level: LevelName): MeasurementText => ({
  label: `${levelLabels[level]}, Breite gerade hindurch`,
  what: `Gerade hindurch von Seite zu Seite, auf Höhe ${ofLine(level)}.`,
  onBody: `Halten Sie zwei Bücher flach auf Höhe ${ofLine(level)} an die Seiten, den Buchrücken nach innen, sodass sie gerade anliegen. Messen Sie gerade von einem Buchrücken zum anderen.`,
  alone:
    "Stellen Sie sich mit einer Seite leicht an eine Wand und halten Sie auf der anderen ein Buch flach an die Linie. Treten Sie weg und messen Sie von der Wand bis zum Buch.",
  onForm: `Stellen Sie die Büste fest und halten Sie zwei Bücher flach auf Höhe ${ofLine(level)} an, den Buchrücken nach innen; nie gegen eine Büste lehnen, die sich drehen kann. Messen Sie gerade von einem Buchrücken zum anderen.`,
  landmark: "Die breiteste Stelle auf der Linie, von vorn gesehen, die Arme abgespreizt.",
  mistake: "Die Bücher hochkant halten, eindrücken oder das Maßband vorn herum legen.",
});

const shoulderToApex: MeasurementText = {
  label: "Schulter bis Brustpunkt",
  what: "Vom Halspunkt, wo die Schulternaht auf den Hals trifft, hinab zur stärksten Stelle der Brust.",
  onBody:
    "Halten Sie das Maßband dort an, wo die Schulterlinie auf den Hals trifft, und führen Sie es über die Brust zum Brustpunkt. Messen Sie beide Seiten; oft sind sie verschieden.",
  alone: "Halten Sie den Anfang mit der Hand derselben Seite und lesen Sie am Brustpunkt im Spiegel ab.",
  onForm:
    "Halten Sie das Maßband dort an, wo die Schulternaht der Büste auf den Hals trifft, und führen Sie es über die Brust zum Brustpunkt. Messen Sie beide Seiten.",
  landmark: "Der Halspunkt, wo eine Halskette die Schulterlinie kreuzt, und der Brustpunkt.",
  mistake: "In der Mitte der Schulter statt am Hals begonnen.",
};

const shoulderLength: MeasurementText = {
  label: "Schulterlänge",
  what: "Vom Halspunkt auf der Schulter entlang bis zum Schulterpunkt.",
  onBody:
    "Tasten Sie bei hängendem Arm nach der Knochenspitze der Schulter. Messen Sie oben auf der Schulter vom Hals bis zu diesem Punkt.",
  alone: "Markieren Sie zuerst den Schulterpunkt mit einem Aufkleber und lesen Sie im Spiegel ab.",
  onForm:
    "Messen Sie auf der Schulternaht der Büste von der Halskante bis zur Kante des Armlochs. Messen Sie beide Seiten.",
  landmark: "Die Knochenspitze der Schulter, über der Mitte des Arms.",
  mistake: "Über die Kante hinaus in den Arm gemessen.",
};

const shoulderDrop: MeasurementText = {
  label: "Schulterschräge",
  what: "Wie viel tiefer der Schulterpunkt liegt als der Halspunkt, senkrecht gemessen.",
  onBody:
    "Halten Sie ein Lineal waagerecht vom Halspunkt nach außen. Messen Sie von ihm senkrecht hinab zur Knochenspitze der Schulter.",
  alone: "Stellen Sie sich gerade vor den Spiegel und lesen Sie beide Höhen an einem Maßband ab, das daneben hängt.",
  onForm:
    "Halten Sie ein Lineal waagerecht vom Halsende der Schulternaht der Büste. Messen Sie von ihm senkrecht hinab zum äußeren Ende der Naht.",
  landmark: "Beide Enden der Schulterlinie.",
  mistake: "Eine hochgezogene Schulter: Lassen Sie die Arme hängen.",
};

const waistToFloor = (side: string, where: string): MeasurementText => ({
  label: `Taille bis Boden, ${side}`,
  what: `Vom Taillengummi hinab zum Boden, ${where}.`,
  onBody: `Mit den Schuhen, die dazu getragen werden, oder ohne: Halten Sie das Maßband ${where} an das Taillengummi. Lassen Sie es der Hüfte folgen und dann gerade zum Boden hängen.`,
  alone:
    "Stellen Sie sich auf das Ende des Maßbands, führen Sie es zum Taillengummi hinauf und lesen Sie dort im Spiegel ab.",
  onForm: `Stellen Sie die Büste zuerst auf die Größe der Person ein. Messen Sie ${where} von der Taille der Büste zum Boden.`,
  landmark: "Die Unterkante des Taillengummis.",
  mistake: "Sich zum Ablesen beugen: Dann rutscht die Taille sofort nach unten.",
});

const onlyWithArms = (how: string): string => `Nur bei einer Büste mit Armen: ${how} Sonst weglassen.`;

const lengthTexts: { readonly [name in LengthName]: MeasurementText } = {
  shoulderToApex,
  leftShoulderToApex: { ...shoulderToApex, label: "Linke Schulter bis Brustpunkt" },
  rightShoulderToApex: { ...shoulderToApex, label: "Rechte Schulter bis Brustpunkt" },
  ...lengthPlaceTexts,
  ...armholeTexts,
  ...upperChestTexts,
  apexToApex: {
    label: "Brustpunktabstand",
    what: "Von einem Brustpunkt zum anderen, gerade hinüber.",
    onBody:
      "Halten Sie das Maßband an einen Brustpunkt und führen Sie es gerade zum anderen, ohne es dazwischen einzudrücken. Wird ein BH getragen, ist er an.",
    alone: "Halten Sie das Maßband mit beiden Händen und lesen Sie im Spiegel ab.",
    onForm: "Messen Sie gerade von einem Brustpunkt der Büste zum anderen. Folgen Sie dazwischen nicht der Oberfläche.",
    landmark: "Die beiden Brustpunkte.",
    mistake: "Das Maßband sinkt dazwischen ein und zeigt zu viel.",
  },
  napeToWaist: {
    label: "Rückenlänge",
    what: "Nacken bis Taille: vom untersten Halswirbel über die hintere Mitte hinab zum Taillengummi.",
    onBody:
      "Die Person beugt den Kopf, damit der Wirbel vorsteht, und hält ihn dann wieder gerade. Führen Sie das Maßband die Wirbelsäule hinab bis zur Unterkante des Taillengummis.",
    alone:
      "Befestigen Sie das Ende mit einer Klammer über dem Wirbel am Kragen, lassen Sie das Maßband den Rücken hinabhängen und lesen Sie seitlich in zwei Spiegeln ab; besser ist es, jemanden zu bitten.",
    onForm:
      "Messen Sie in der hinteren Mitte der Büste von der Halsnaht hinab bis zur Taille. Folgen Sie der Oberfläche.",
    landmark: "Der unterste Halswirbel, der vorsteht, wenn der Kopf gebeugt ist.",
    mistake: "Mit noch gebeugtem Kopf gemessen, oder bis zu einem verrutschten Bund.",
  },
  waistToHighHip: {
    label: "Taille bis hohe Hüfte",
    what: "Vom Taillengummi an der Seite hinab zur hohen Hüfte.",
    onBody:
      "Messen Sie an der Seite von der Unterkante des Taillengummis bis dorthin, wo die hohe Hüfte gemessen wurde. Üblich ist der halbe Weg zur Hüfte.",
    alone: "Stellen Sie sich seitlich zum Spiegel und folgen Sie der Seitennaht.",
    onForm:
      "Messen Sie auf der Seitennaht der Büste von der Taille hinab zur hohen Hüftlinie. Folgen Sie der Oberfläche.",
    landmark: "Das Taillengummi und die hohe Hüfte, an der Seite.",
    mistake: "Vorn gemessen, wo der Weg länger ist.",
  },
  waistToFullHip: {
    label: "Taille bis Hüfte",
    what: "Vom Taillengummi an der Seite hinab zur Hüfte.",
    onBody:
      "Messen Sie an der Seite von der Unterkante des Taillengummis bis dorthin, wo die Hüfte gemessen wurde. Lassen Sie das Maßband der Hüfte folgen.",
    alone: "Markieren Sie zuerst die Hüfte mit ablösbarem Klebeband und folgen Sie dann im Spiegel der Seitennaht.",
    onForm:
      "Messen Sie auf der Seitennaht der Büste von der Taille hinab zur stärksten Stelle. Folgen Sie der Oberfläche.",
    landmark: "Das Taillengummi und die Hüfte, an der Seite.",
    mistake: "Am Hüftknochen aufgehört, der weit über der Hüfte liegt.",
  },
  frontWaistLength: {
    label: "Vordere Taillenlänge",
    what: "Vom Halspunkt über den Brustpunkt hinab zum Taillengummi.",
    onBody:
      "Halten Sie das Maßband dort an, wo die Schulterlinie auf den Hals trifft, und führen Sie es über den Brustpunkt. Von dort fällt es gerade bis zum Taillengummi.",
    alone: "Halten Sie den Anfang mit einer Hand und lesen Sie am Taillengummi im Spiegel ab, ohne sich zu beugen.",
    onForm:
      "Halten Sie das Maßband dort an, wo die Schulternaht der Büste auf den Hals trifft, und führen Sie es über den Brustpunkt. Von dort gerade hinab zur Taille.",
    landmark: "Der Halspunkt, der Brustpunkt, das Taillengummi.",
    mistake: "Das Maßband folgt unter der Brust dem Körper.",
  },
  sideNeckToWaistBack: {
    label: "Halspunkt bis Taille, hinten",
    what: "Vom Halspunkt gerade über den Rücken hinab zum Taillengummi.",
    onBody:
      "Halten Sie das Maßband dort an, wo die Schulterlinie auf den Hals trifft, und führen Sie es über das Schulterblatt. Lesen Sie an der Unterkante des Taillengummis ab.",
    alone:
      "Bitten Sie jemanden, oder befestigen Sie den Anfang mit einer Klammer und lesen Sie seitlich in zwei Spiegeln ab.",
    onForm:
      "Halten Sie das Maßband dort an, wo die Schulternaht der Büste auf den Hals trifft. Führen Sie es gerade über den Rücken hinab zur Taille.",
    landmark: "Der Halspunkt und das Taillengummi.",
    mistake: "Schräg zur Wirbelsäule hin gemessen.",
  },
  waistToFloorFront: waistToFloor("vorn", "vorn"),
  waistToFloorBack: waistToFloor("hinten", "hinten"),
  waistToFloorLeft: waistToFloor("links", "an der linken Seite"),
  waistToFloorRight: waistToFloor("rechts", "an der rechten Seite"),
  shoulderLength,
  leftShoulderLength: { ...shoulderLength, label: "Linke Schulterlänge" },
  rightShoulderLength: { ...shoulderLength, label: "Rechte Schulterlänge" },
  shoulderDrop,
  leftShoulderDrop: { ...shoulderDrop, label: "Linke Schulterschräge" },
  rightShoulderDrop: { ...shoulderDrop, label: "Rechte Schulterschräge" },
  acrossShoulders: {
    label: "Schulterbreite",
    what: "Über den Rücken von einem Schulterpunkt zum anderen, über den Nacken.",
    onBody:
      "Suchen Sie bei hängenden Armen die Knochenspitze jeder Schulter. Führen Sie das Maßband von der einen über den Wirbel am Nacken zur anderen.",
    alone: "Bitten Sie jemanden; mit zum Messen gehobenen Armen stimmt das Maß nicht.",
    onForm: "Messen Sie von der Oberkante des einen Armlochs über den Nacken zum anderen. Folgen Sie der Oberfläche.",
    landmark: "Die Knochenspitzen der Schultern und der Nacken.",
    mistake: "Zurückgenommene oder hochgezogene Schultern.",
  },
  upperBackWidth: {
    label: "Rückenbreite",
    what: "Über die Schulterblätter von einer Armfalte zur anderen.",
    onBody:
      "Die Arme hängen; suchen Sie, wo jeder hinten eine Falte bildet. Messen Sie waagerecht zwischen den Falten, auf halber Höhe des Armlochs.",
    alone: "Bitten Sie jemanden; mit zum Messen gehobenen Armen stimmt das Maß nicht.",
    onForm: "Messen Sie waagerecht zwischen den Kanten der Armlöcher, auf halber Höhe. Folgen Sie der Oberfläche.",
    landmark: "Die hinteren Armfalten, über den Schulterblättern.",
    mistake: "Verschränkte Arme machen den Rücken breiter.",
  },
  neckGirth: {
    label: "Halsumfang",
    what: "Rundum am Halsansatz, wo ein schlichter Halsausschnitt ohne Kragen läge.",
    onBody:
      "Stellen Sie das Maßband auf die Kante, über den Wirbel am Nacken und durch die Halsgrube. Lassen Sie es locker liegen.",
    alone: "Legen Sie eine feine Kette um den Hals, merken Sie sich, wo sie sich trifft, und messen Sie die Kette.",
    onForm:
      "Stellen Sie das Maßband auf die Kante, auf der Halsnaht der Büste entlang. Lesen Sie am Nacken ab, wo die Enden sich treffen.",
    landmark: "Der Wirbel am Nacken und die Halsgrube.",
    mistake: "Um die Mitte des Halses gemessen statt um seinen Ansatz.",
  },
  upperArmGirth: {
    label: "Oberarmumfang",
    what: "Rundum an der stärksten Stelle des hängenden Oberarms.",
    onBody:
      "Der Arm hängt locker; legen Sie das Maßband waagerecht mitten zwischen Schulter und Ellenbogen um. Ziehen Sie es an, bis es gerade anliegt.",
    alone: "Legen Sie das Maßband zur Schlaufe, schieben Sie den Arm hindurch und lesen Sie im Spiegel ab.",
    onForm: onlyWithArms("mitten zwischen Schulter und Ellenbogen messen."),
    landmark: "Mitten zwischen Schulterpunkt und Ellenbogen.",
    mistake: "Ein gebeugter oder angespannter Arm misst zu viel.",
  },
  elbowGirth: {
    label: "Ellenbogenumfang",
    what: "Rundum am Ellenbogen, über seine Spitze, der Arm ein wenig gebeugt.",
    onBody:
      "Die Person beugt den Arm ein wenig, wie er von selbst hängt. Legen Sie das Maßband über die Spitze des Ellenbogens und durch die Beuge.",
    alone:
      "Legen Sie die Hand vor sich ab, sodass der Arm ein wenig gebeugt ist, und legen Sie das Maßband mit der anderen herum.",
    onForm: onlyWithArms("um den Ellenbogen messen."),
    landmark: "Die Spitze des Ellenbogens.",
    mistake: "Ein gestreckter Arm misst zu wenig für einen Ärmel.",
  },
  wristGirth: {
    label: "Handgelenkumfang",
    what: "Rundum am Handgelenk, über den Knochen auf der Seite des kleinen Fingers.",
    onBody: "Legen Sie das Maßband über den Handgelenkknochen. Ziehen Sie es an, bis es gerade anliegt.",
    alone: "Legen Sie das Maßband mit der anderen Hand herum und lesen Sie direkt ab.",
    onForm: onlyWithArms("um das Handgelenk messen."),
    landmark: "Der runde Knochen auf der Seite des kleinen Fingers.",
    mistake: "Oberhalb des Knochens gemessen, wo es weniger ist.",
  },
  armLength: {
    label: "Armlänge",
    what: "Vom Schulterpunkt außen am Arm hinab zum Handgelenkknochen.",
    onBody:
      "Der Arm hängt, ein wenig gebeugt. Führen Sie das Maßband außen über den Ellenbogen hinab zum Handgelenkknochen.",
    alone:
      "Befestigen Sie den Anfang mit einer Klammer an der Schulter, lassen Sie den Arm hängen und lesen Sie am Handgelenk im Spiegel ab.",
    onForm: onlyWithArms("vom Schulterpunkt bis zum Handgelenk messen."),
    landmark: "Der Schulterpunkt und der Handgelenkknochen.",
    mistake: "An der Innenseite gemessen, die kürzer ist.",
  },
  shoulderToElbow: {
    label: "Schulter bis Ellenbogen",
    what: "Vom Schulterpunkt außen am Arm hinab zur Spitze des Ellenbogens.",
    onBody: "Der Arm hängt, ein wenig gebeugt. Führen Sie das Maßband außen hinab zur Spitze des Ellenbogens.",
    alone: "Befestigen Sie den Anfang mit einer Klammer an der Schulter und lesen Sie am Ellenbogen im Spiegel ab.",
    onForm: onlyWithArms("vom Schulterpunkt bis zum Ellenbogen messen."),
    landmark: "Der Schulterpunkt und die Spitze des Ellenbogens.",
    mistake: "In der Armbeuge aufgehört.",
  },
};

export const measurementTexts = Object.fromEntries([
  ...levelNames.flatMap((level) =>
    levelReadingNames.map((reading) => [`${level}${reading}`, levelText(level, reading)] as const),
  ),
  ...lengthNames.map((name) => [name, lengthTexts[name]] as const),
]) as ByMeasurement<MeasurementText>;

/** Nouns keep their capitals inside a sentence; only an adjective at the beginning loses it. */
export const measurementInSentence = (name: MeasurementName): string =>
  measurementTexts[name].label
    .replace(",", "")
    .replace(/^(Hohe|Linke|Rechte|Untere|Vordere)\b/, (adjective) => adjective.toLowerCase());
