import { clothKind, chosenWidth } from "../../../app/supplies/fittingSupplies";
import type { Plan } from "../../../core/plan/plan";
import { clothWidths } from "../../../core/supplies/goods";
import { battingNames } from "../../../text/batting";
import { finishingWords } from "../../../text/finishing";
import { pieceWords } from "../../../text/plan";
import {
  battingToHave,
  clothPictureWords,
  clothSentence,
  leftWords,
  notionLines,
  suppliesSheetTitle,
  suppliesWords,
} from "../../../text/supplies";
import { Drawing } from "../../drawing/Drawing";
import { clothScene } from "../../drawing/layoutScene";
import { SheetPage, usePrintedName } from "../../kit/sheet/SheetPage";
import { LayoutPicture } from "../../kit/supplies/LayoutPicture";
import { useBattingSupplies } from "../../kit/supplies/useBattingSupplies";
import { useSuppliesNow } from "../../kit/supplies/useSuppliesNow";
import { useFitting, useLengths } from "../../kit/useStore";

/** What to buy, on one page: each batting with its layout, the cloth of the cover with its own, and notions with boxes to tick. */
export function SuppliesSheet({ plan }: { readonly plan: Plan }) {
  const { unit, step } = useLengths();
  const fitting = useFitting();
  const title = suppliesSheetTitle(usePrintedName());
  const battings = useBattingSupplies(plan);
  const made = useSuppliesNow(plan);
  const names = battingNames(fitting);
  const tried = fitting.work.some(({ did }) => did === "trial");
  const [kind, width] = [clothKind(fitting), chosenWidth(fitting)];
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a narrow screen scrolls the sheet sideways, with keys as well.
    <section className="sheets supplies-sheet" tabIndex={0} aria-label={title}>
      <SheetPage title={title} isFirst isLast>
        {battings.map(({ role, layout, pieces }) => (
          <div key={role} className="sheet-keep">
            <p>
              <span className="sheet-box" aria-hidden /> <strong>{battingToHave(names[role], layout, unit)}</strong>{" "}
              {leftWords(layout, step)}
            </p>
            <LayoutPicture layout={layout} name={names[role]} lettersAs={paperLetters} />
            <p>{pieces.map((piece) => `${piece.order} ${pieceWords(piece)}`).join(", ")}.</p>
          </div>
        ))}
        {battings.length === 0 ? (
          <p>{suppliesWords.allCut}</p>
        ) : (
          <p>
            {suppliesWords.laidOut(step)} {tried ? "" : suppliesWords.trial}
          </p>
        )}
        {made === null ? null : (
          <>
            <div className="sheet-keep">
              <p>
                <span className="sheet-box" aria-hidden />{" "}
                <strong>{clothSentence(kind, width, made.cover, unit)}</strong>{" "}
                {made.cover.ids.length === 0 ? null : suppliesWords.washed}
              </p>
              {made.cover.ids.length === 0 ? null : (
                <div className="layout-pictures">
                  <Drawing
                    scene={clothScene(
                      made.cover.rows,
                      clothWidths[width],
                      ...clothPictureWords(made.cover, width, unit),
                      paperLetters,
                    )}
                  />
                </div>
              )}
            </div>
            <ul className="plain-list">
              {[finishingWords.supplyBra, ...notionLines(made.notions, unit)].map((line) => (
                <li key={line}>
                  <span className="sheet-box" aria-hidden /> {line}
                </li>
              ))}
            </ul>
          </>
        )}
      </SheetPage>
    </section>
  );
}

/** Ten points where a layout is as wide as the sheet of supplies lets it be. */
const paperLetters = 30;
