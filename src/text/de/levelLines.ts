import type { LengthStep } from "../../core/lengthText";
import type { PlannedLevel } from "../../core/plan/plan";
import { levelLines } from "../levelLines";
import { noBreakSpace } from "../shownLength";
import { levelWords } from "./pictures";
import { countWord } from "./grammar/listed";

export type { LevelLine } from "../levelLines";

/** What is told of each line is worked out once; only its name is another one. */
const germanLines = (levels: readonly PlannedLevel[], step: LengthStep) =>
  levelLines(levels, step).map((line) => ({ ...line, level: levelWords[line.name] }));

export { germanLines as levelLines };

export function markLinesSentence(levels: readonly PlannedLevel[], step: LengthStep): string {
  const lines = germanLines(levels, step);
  const allGuessed = lines.every(({ isGuessed }) => isGuessed);
  const each = lines.map(({ level, below, isGuessed }) => {
    const place = `${level}${noBreakSpace}${below}`;
    return isGuessed && !allGuessed ? `${place} (geschätzt)` : place;
  });
  const count = lines.length === 1 ? "eine Linie" : `${countWord(lines.length)} Linien`;
  return `Auf der Büste ${count} anzeichnen, senkrecht unter dem Nacken: ${each.join(", ")}.${allGuessed ? ` ${markLinesWords.allGuessed}` : ""}`;
}

export const markLinesWords = {
  title: "Vor dem ersten Polster: die Linien anzeichnen",
  how: "Messen, wie hoch der Nacken der Büste über dem Boden liegt, und jede Zahl abziehen; auf dieser Höhe einen Zeiger befestigen, die Büste daran vorbeidrehen und die Linie in kleinen Abständen anzeichnen.",
  why: "Das sind die Höhen der Person, nicht die der Büste: Eine Linie kann ein wenig neben der Taille der Büste liegen.",
  allGuessed: "Diese Höhen sind geschätzt: Mit den Höhen der Person über dem Boden werden es die eigenen der Person.",
} as const;
