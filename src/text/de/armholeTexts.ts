import type { MeasurementText } from "../measurementText";

const noneOnBody = "Ein Körper hat das nicht. Lassen Sie es weg.";

export const armholeTexts = {
  armholePlateHeight: {
    label: "Armloch der Büste, Höhe",
    what: "Wie hoch das flache Oval ist, das das Armloch der Büste schließt, gerade von der Ober- zur Unterkante.",
    onBody: noneOnBody,
    alone: noneOnBody,
    onForm:
      "Halten Sie ein Lineal flach an das Oval am Ende der Schulter. Lesen Sie von der Oberkante gerade hinab bis zur untersten Kante ab.",
    landmark: "Der Rand des Ovals, wo der Stoff der Büste sich umlegt.",
    mistake: "Das Maßband läuft weiter über die Schulter oder die Seite hinab.",
  },
  armholePlateBreadth: {
    label: "Armloch der Büste, Breite",
    what: "Wie breit das flache Oval ist, das das Armloch der Büste schließt, gerade von vorn nach hinten.",
    onBody: noneOnBody,
    alone: noneOnBody,
    onForm:
      "Halten Sie ein Lineal flach an das Oval am Ende der Schulter. Lesen Sie an der breitesten Stelle von der vorderen gerade zur hinteren Kante ab.",
    landmark: "Der Rand des Ovals, wo der Stoff der Büste sich umlegt.",
    mistake: "Das Maßband biegt sich um den Rand.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
