export const finishingWords = {
  title: "Abschluss",
  lead: (hasCover: boolean): string =>
    hasCover
      ? "Danach beziehen, über dem Bezug messen, das Taillenband annähen und einen Arm dazu."
      : "Danach das Taillenband annähen und einen Arm dazu.",
  paddingFirst: "Zuerst das Polster.",
  notDone: "Beim Polstern fehlt noch ein Schritt: Beenden Sie ihn, bevor etwas darüberkommt.",
  routeTitle: "Was über das Polster kommt",
  leftOutStage: { leftOut: "ausgelassen", partlyLeftOut: "zum Teil ausgelassen" },
  stages: {
    noCover: "Bezug",
    cut: "Bezug, zugeschnitten und genäht",
    fit: "Bezug darüber, Seiten abgesteckt",
    read: "Über dem Bezug gemessen",
    hem: "Saum",
    lines: "Taillenband und Linien",
    arm: "Arm",
    after: "Staubhülle",
  },
  toPatterns: "Schnittteile in wahrer Größe",
  leaveOut: "Das auslassen",
  leftOut: "Ausgelassen.",
  allDone: (hasCover: boolean): string =>
    `Jetzt steht sie für die Person da. Wenn ein Kleidungsstück nicht passt, messen Sie wieder: Beginnen Sie für dieselbe Person eine neue Anprobe, und ${hasCover ? "öffnen Sie den Bezug in der hinteren Mitte" : "geben Sie Lagen dazu oder nehmen Sie welche ab"}.`,
  noCover: "Es ist kein Bezug gewählt.",
  coverAfterAll: "Doch einen Bezug wählen",
  coverAfterAllHow:
    "Er kommt über das Polster. Nehmen Sie zuerst ab, was außen angenäht ist oder hängt, Taillenband, Markierband und Arm: Sie kommen wieder auf den Bezug.",
  keepNone: "Ohne Bezug bleiben",
  notAllOn: (count: number): string =>
    count === 1
      ? "Ein Polster ist noch aufzustecken; es kommt vor allem anderen darauf."
      : `${count} Polster sind noch aufzustecken; sie kommen vor allem anderen darauf.`,
  toPadding: "Zurück zum Polstern",
  supplyBra: "Wenn unter den Kleidern ein BH getragen wird: einer, der an der Büste bleiben kann.",
  count: "Die Nadeln in die Schale zurückzählen. Fehlen welche, mit einem Magneten über das Polster fahren.",
} as const;
