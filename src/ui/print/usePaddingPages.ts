import type { PadProgress } from "../../app/padProgress";
import { formatLength } from "../../core/lengthText";
import type { Plan } from "../../core/plan/plan";
import { useCutFrom } from "../batting/useCutFrom";
import { levelToMeasure } from "../padding/levelToMeasure";
import { cutSentence, numberedName, placeSentence } from "../text/pieces";
import { levelWords } from "../text/pictures";
import { planWords } from "../text/plan";
import { printingWords } from "../text/printing";
import { noBreakSpace } from "../text/shownLength";
import { useFitting, useLengths } from "../useStore";
import type { PieceRow } from "./PrintPieces";
import { type PrintedPage, printPages } from "./printPages";
import { readingsAfter, takenByLevel, type TakenReading } from "./readingsAfter";

/** The pages of the padding sheet: the pieces with what is done of them, and what padding cannot do. */
export interface PaddingPages {
  readonly pages: readonly PrintedPage<PieceRow>[];
  readonly limits: readonly string[];
}

export function usePaddingPages(plan: Plan, progress: PadProgress): PaddingPages {
  const rows = usePieceRows(plan, progress);
  const limits = useLimits(plan);
  return { pages: printPages(rows, limits, plan.basis === "draft"), limits };
}

function usePieceRows(plan: Plan, progress: PadProgress): readonly PieceRow[] {
  const { step, write } = useLengths();
  const cutFrom = useCutFrom();
  const taken = readingsAfter(useFitting());
  const readText = (readings: readonly TakenReading[]): string =>
    takenByLevel(readings)
      .map(({ level, parts }) =>
        printingWords.readAt(
          levelWords[level],
          parts.map(({ part, length }) => [part, unbrokenFigure(formatLength(length, step, "bare"))] as const),
        ),
      )
      .join("; ");
  return plan.pieces.map((piece) => {
    const level = levelToMeasure(plan, piece);
    const { girth, frontArc } = piece.readingsAfter[level];
    const name = numberedName(piece);
    const place = placeSentence(piece, plan.levels, step);
    return {
      id: piece.id,
      name,
      place,
      isPinned: progress.pieces.some((state) => state.pinned && state.piece.id === piece.id),
      piece: `${name}. ${place}`,
      cut: cutSentence(piece, step, cutFrom(piece)),
      tape: printingWords.tapeReads(levelWords[level], write(girth), write(frontArc)),
      read: readText(taken.get(piece.id) ?? []),
    };
  });
}

/** `32 1/4` on one line, as every length in words. */
const unbrokenFigure = (text: string): string => text.replaceAll(" ", noBreakSpace);

function useLimits({ matters, shortfalls, seamShifts }: Plan): readonly string[] {
  const { step } = useLengths();
  const words = planWords(step);
  return [
    ...matters.map((matter) => words.formMatter(matter)),
    ...shortfalls.map((shortfall) => words.shortfallAdvice(shortfall)),
    ...seamShifts.map((shift) => words.seamShift(shift)),
  ];
}
