import { betweenDraftKey } from "../../../app/session/commands";
import {
  type BetweenLine,
  betweenName,
  type BetweenReadingName,
  betweenReadingNames,
} from "../../../core/cover/betweenLines";
import { type LengthUnit, parseLength } from "../../../core/lengthText";
import { mm } from "../../../core/units";
import { betweenWords } from "../../../text/makingSteps";
import { lineWords } from "../../../text/pictures";
import { doneWords } from "../../../text/stops";
import { DraftLength } from "../../kit/field/DraftLength";
import { StepFrame } from "../../kit/stop/StepFrame";
import type { StepAtHand } from "../../kit/stop/useStep";
import { useDrafts, useLengths } from "../../kit/useStore";

/** Readings between the level lines, all of them on one stop, since each is optional and they are noted together. */
export function BetweenStop({ at }: { readonly at: StepAtHand }) {
  const { step, facts, record } = at;
  const { unit } = useLengths();
  const drafts = useDrafts().other;
  const isUnclear = betweenReadingNames.some((name) => {
    const text = drafts[betweenDraftKey(name)]?.trim() ?? "";
    return text !== "" && !parseLength(text, unit).ok;
  });
  const read = facts.between.flatMap(({ above }) =>
    parts.flatMap((part) => {
      const name = betweenName(above, part);
      const text = drafts[betweenDraftKey(name)]?.trim() ?? "";
      return parseLength(text, unit).ok ? [[name, text] as const] : [];
    }),
  );
  const isPaired = !isUnclear && facts.between.every(({ above }) => isPair(above, read, unit));
  const said = doneWords(step);
  return (
    <StepFrame
      at={at}
      trail={{}}
      act="read-between"
      kind="working"
      picture={null}
      after={
        <p className="stop-then">
          {read.length > 0 && !isPaired
            ? betweenWords.noFront
            : betweenWords.kinds[read.length === 2 * facts.between.length ? "measured" : "guessed"]}
        </p>
      }
      slab={{
        words: said,
        press: () => record(said, { readings: Object.fromEntries(read) }),
        isReady: read.length > 0 && isPaired,
      }}
      ways={
        <button type="button" className="patch patch-plain" onClick={() => record(betweenWords.skip, { readings: {} })}>
          {betweenWords.skip}
        </button>
      }
    >
      <div className="between-lines">
        {facts.between.map((line) => (
          <LineFields key={line.above} line={line} at={at} />
        ))}
      </div>
    </StepFrame>
  );
}

const parts = ["Girth", "FrontArc"] as const;

/** Both or neither, and the front less than all around. */
function isPair(
  above: BetweenLine["above"],
  read: readonly (readonly [BetweenReadingName, string])[],
  unit: LengthUnit,
): boolean {
  const [girth, front] = parts.map((part) => {
    const text = read.find(([name]) => name === betweenName(above, part))?.[1];
    const length = text === undefined ? null : parseLength(text, unit);
    return length?.ok ? length.value : null;
  });
  return girth == null || front == null ? girth === front : front < girth;
}

function LineFields({ line: { above, depthBelowNape }, at }: { readonly line: BetweenLine; readonly at: StepAtHand }) {
  const { write } = useLengths();
  const level = at.plan.levels.find(({ name }) => name === above)?.depthBelowNape.value ?? 0;
  return (
    <fieldset className="between-line">
      <legend>{betweenWords.below(lineWords[above], write(mm(depthBelowNape - level)))}</legend>
      <DraftLength draftKey={betweenDraftKey(betweenName(above, "Girth"))} label={betweenWords.girth} />
      <DraftLength draftKey={betweenDraftKey(betweenName(above, "FrontArc"))} label={betweenWords.front} />
    </fieldset>
  );
}
