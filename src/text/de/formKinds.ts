import type { FormFacts } from "../../app/steps/formFacts";
import type { LengthStep } from "../../core/lengthText";
import type { FormKind } from "../../document/fittingLimits";
import { shownLength } from "../shownLength";
import { levelWords } from "./pictures";

export { unsaidForm } from "../formKinds";

export const formKindWords = {
  title: "Was für eine Büste es ist",
  lead: "Davon hängt ab, ob eine Nadel hält und wie jedes Polster befestigt wird.",
  ask: "Angeben, was für eine Büste es ist",
  unknown: "Noch nicht angegeben",
  kinds: {
    cloth: "Stoff über Pappmaché oder Kork: Eine Nadel geht hinein",
    foam: "Schaumstoff: Eine gerade eingesteckte Nadel hält",
    hard: "Hart, aus Kunststoff, Glasfaser oder Draht: Keine Nadel hält",
    dials: "Hart, mit Drehknöpfen verstellbar",
    stretch: "Dehnbarer Stoff über einer harten Büste, oder Schultern zum Einklappen",
  } satisfies { readonly [kind in FormKind]: string },
  shared: "Andere benutzen sie auch, oder sie muss zurück, wie sie war",
  legs: "Sie hat Beine",
} as const;

export function readyWords(
  { kind, isShared, hasLegs, hasUnderCover, dials }: FormFacts,
  lengths: LengthStep,
): readonly string[] {
  const most = dials.map(({ level, most }) => `${levelWords[level]} ${shownLength(most, lengths)}`).join(", ");
  return [
    ...(kind === "dials"
      ? [
          `Alle Knöpfe kleiner stellen als die Person, ${dials.length === 0 ? "rundum um eine Lage Vlies" : `höchstens auf: ${most}`}. Die Knöpfe festkleben und nie mehr drehen; nicht auf die Büste stützen.`,
        ]
      : []),
    ...(hasUnderCover
      ? [
          `Einen straffen Unterbezug überziehen, ein abgeschnittenes T-Shirt oder einen eng genähten Schlauch${kind === "dials" ? "; er überbrückt die Spalten" : ""}. Alles wird auf ihn gesteckt und geheftet${isShared ? "; mit einer Öffnung in der hinteren Mitte lässt er sich ganz abnehmen" : ""}.`,
        ]
      : []),
    ...(hasUnderCover
      ? [
          "Erst danach die Büste messen. Wurde sie schon gemessen, noch einmal messen: Das Maßband zeigt jetzt etwas anderes.",
        ]
      : []),
    ...(kind === "foam"
      ? ["Kein Sprühkleber ohne Probe an einer verdeckten Stelle: Lösungsmittel zersetzen Schaumstoff."]
      : []),
    ...(kind === "stretch" ? ["Den Ständer beschweren und beim Messen festhalten, damit sich nichts dreht."] : []),
    ...(hasLegs ? ["Die Oberschenkel werden hier nicht gepolstert: Die Linien enden an der Hüfte."] : []),
    ...(isShared
      ? ["Alles wieder abzunehmen dauert einen Abend, und der Unterbezug wird nicht für eine andere Person benutzt."]
      : []),
  ];
}

export function pinningWords({ kind, hasUnderCover }: Pick<FormFacts, "kind" | "hasUnderCover">): string {
  if (hasUnderCover) return "Schräg, nur in den Unterbezug.";
  if (kind === "cloth") return "Schräg, durch den Stoff und ein wenig in den Kern.";
  if (kind === "foam") return "Gerade hinein: Schaumstoff hält sie.";
  return "Schräg. In Schaumstoff gerade hinein.";
}

export const bastedTo = ({ kind, hasUnderCover }: FormFacts): string =>
  hasUnderCover
    ? "Den Unterbezug mitfassen, nie die Büste oder das Gummi des BHs."
    : kind === "foam"
      ? "Den Stoff über dem Schaumstoff mitfassen, nie das Gummi des BHs."
      : "Den Stoff der Büste oder den Unterbezug mitfassen, nie eine harte Büste oder das Gummi des BHs.";

export const heldBy = ({ kind, hasUnderCover }: Pick<FormFacts, "kind" | "hasUnderCover">): string =>
  hasUnderCover ? "den Unterbezug" : kind === "foam" ? "den Stoff über dem Schaumstoff" : "den Stoff der Büste";
