export const questionsWords = {
  title: "Was den Plan genauer macht, das Wichtigste zuerst",
  names: {
    bodyFronts: "Vorderweiten der Person an jeder Linie, von Seitennaht zu Seitennaht",
    bodyGirths: "Unterbrust und hohe Hüfte der Person, rundum",
    bodyHeights: "Höhen der Person über dem Boden",
    bodyLengths: "Rückenlänge, Schulter bis Brustpunkt und die Längen an der Seite der Person",
    bodyApexes: "Abstand der Brustpunkte der Person",
    bodyBreadths: "Breiten der Person, gerade hindurch",
    formGirths: "Die Maße der Büste selbst, rundum und vorn",
    formHeights: "Höhen der Büste über dem Boden",
    formLines: "Die Linien der Person auf der Büste angezeichnet und die nackte Büste dort gemessen",
    formBreadths: "Breite der nackten Büste auf jeder Linie, gerade hindurch",
    formDepths: "Tiefe der nackten Büste auf jeder Linie, von vorn nach hinten",
  },
  closer: (length: string): string => `etwa ${length} genauer`,
  brings: (length: string): string =>
    `Damit liegen neun von zehn Maßen der gepolsterten Büste etwa ${length} näher am Ziel.`,
} as const;
