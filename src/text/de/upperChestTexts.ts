import type { MeasurementText } from "../measurementText";

export const upperChestTexts = {
  upperChestGirth: {
    label: "Oberbrustumfang",
    what: "Rundum dicht unter den Achseln, oberhalb der Wölbung der Brust.",
    onBody:
      "Legen Sie das Maßband waagerecht so hoch unter die Achseln, wie es geht, gerade über den Rücken und vorn oberhalb der Brust. Lesen Sie nach ruhigem Ausatmen ab, die Arme hängen.",
    alone: "Prüfen Sie im Spiegel, ob das Maßband hinten so hoch liegt wie vorn.",
    onForm:
      "Zeichnen Sie die Oberbrustlinie der Person auf der Büste an und legen Sie das Maßband waagerecht darauf. Wo das Armloch tiefer reicht, führen Sie es gerade über die Öffnung.",
    landmark: "Knapp unter der Achsel, wo es vorn noch flach ist.",
    mistake: "Das Maßband rutscht vorn auf die Brust und zeigt zu viel.",
  },
  upperChestFrontArc: {
    label: "Oberbrust vorn",
    what: "Die Oberbrustlinie über die Vorderseite, von unter der Mitte der einen Achsel bis zur anderen.",
    onBody:
      "Markieren Sie jede Seite senkrecht unter der Mitte der Achsel, mit ablösbarem Klebeband auf der Kleidung. Legen Sie das Maßband waagerecht von der linken Markierung über die Vorderseite zur rechten.",
    alone:
      "Setzen Sie die Markierungen seitlich vor dem Spiegel. Halten Sie dann den Anfang des Maßbands an die eine und lesen Sie an der anderen ab.",
    onForm:
      "Messen Sie auf der Oberbrustlinie der Person über die Vorderseite der Büste, von Seitennaht zu Seitennaht oder den Stellen senkrecht darüber.",
    landmark: "Die Seite verläuft senkrecht unter der Mitte der Achsel.",
    mistake: "Die Markierungen wandern nach vorn, und das Maß wird zu klein.",
  },
  upperChestBelowNape: {
    label: "Oberbrust, unter dem Nacken",
    what: "Wie weit die Oberbrustlinie unter dem Nacken liegt, senkrecht gemessen.",
    onBody:
      "Lassen Sie ein Maßband vom Nacken senkrecht hängen, nicht am Rücken entlang. Halten Sie ein Lineal waagerecht vom Maßband der Oberbrust dorthin und lesen Sie ab.",
    alone:
      "Befestigen Sie das Maßband am Nacken am Kragen und lassen Sie es frei hängen. Halten Sie ein Lineal waagerecht an und lesen Sie in zwei Spiegeln ab.",
    onForm:
      "Unnötig, wenn die Oberbrust auf der Linie der Person gemessen wurde. Sonst messen Sie, wie hoch der Nacken der Büste und das Maßband über dem Boden liegen: Der Unterschied ist dieses Maß.",
    landmark: "Der unterste Halswirbel und die Oberkante des Maßbands an der Oberbrust.",
    mistake: "Das Maßband folgt dem Rücken: Dann zeigt es mehr als senkrecht gemessen.",
  },
  acrossChest: {
    label: "Brustbreite",
    what: "Über die Vorderseite von einer Armfalte zur anderen, auf halber Höhe des Armlochs.",
    onBody:
      "Die Arme hängen; suchen Sie, wo jeder vorn eine Falte bildet. Messen Sie waagerecht zwischen den Falten, auf halber Höhe zwischen Schulter und Achsel.",
    alone:
      "Markieren Sie zuerst beide Falten mit ablösbarem Klebeband und legen Sie dann vor dem Spiegel das Maßband von einer zur anderen.",
    onForm: "Messen Sie vorn waagerecht zwischen den Kanten der Armlöcher, auf halber Höhe. Folgen Sie der Oberfläche.",
    landmark: "Die vorderen Armfalten.",
    mistake: "Zurückgenommene Schultern machen die Brust breiter.",
  },
} as const satisfies { readonly [name: string]: MeasurementText };
