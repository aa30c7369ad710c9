import type { LengthStep } from "../../core/lengthText";
import type { FormMatter } from "../../core/plan/formMatters";
import { theLevel } from "./grammar/levels";
import { lineWords } from "./pictures";
import { writtenLength } from "./writtenLength";

export function formMatterText({ level, what, amount }: FormMatter, step: LengthStep): string {
  const [name, line, by] = [theLevel[level], lineWords[level], writtenLength(amount, step)];
  switch (what) {
    case "belowForm":
      return `Die ${line} der Person liegt ${by} unter der Unterkante der Büste, wo sich nichts aufstecken lässt. Befestigen Sie unter der Kante ein Rohr aus Pappe oder Filz und messen Sie es als Teil der Büste, lassen Sie ${name} weg oder nehmen Sie eine längere Büste.`;
    case "aboveReadings":
      return `Die ${line} der Person liegt ${by} über allem, was an der Büste gemessen wurde; dort ist die Büste nur geschätzt. Zeichnen Sie die Linie auf der Büste an und messen Sie dort.`;
    case "belowReadings":
      return `Die ${line} der Person liegt ${by} unter allem, was an der Büste gemessen wurde; dort ist die Büste nur geschätzt. Zeichnen Sie die Linie auf der Büste an und messen Sie dort.`;
  }
}
