import { readingDraftKey } from "../../../app/session/commands";
import { parseLength } from "../../../core/lengthText";
import type { Plan } from "../../../core/plan/plan";
import { isConfirmed, type LevelNow, readingName, type TapePart, tapeParts } from "../../../app/progress/padProgress";
import type { LevelName } from "../../../core/body/vocabulary";
import { useAnnounce } from "../../kit/Announcer";
import { FractionPad, usePadInto } from "../../kit/field/FractionPad";
import { remainingWords, standingOf } from "../../../text/remaining";
import { paddingWords, tapePartNames } from "../../../text/padding";
import { levelWords } from "../../../text/pictures";
import { lengthProblemText } from "../../../text/problems";
import { useDraftsSoon, useLengths, useStoreItself } from "../../kit/useStore";
import { keepReadings, unreadable } from "../../../app/session/typedReadings";
import { Segments } from "../../kit/Segments";

/**
 * The pad of the padding bench: it writes into the stretch at hand, and keeps what was written at one press. On a phone
 * it stands before the fields, so there it says itself what it has written and which stretch comes next.
 */
interface ReadingPadProps {
  readonly plan: Plan;
  readonly level: LevelName;
  readonly part: TapePart;
  readonly now: LevelNow;
  readonly onPart: (part: TapePart) => void;
}

export function ReadingPad({ plan, level, part, now, onPart }: ReadingPadProps) {
  const drafts = useDraftsSoon();
  const { unit, step, write } = useLengths();
  const announce = useAnnounce();
  const store = useStoreItself();
  const key = readingDraftKey(readingName(level, part));
  const text = drafts.other[key] ?? "";
  const hasDrafts = tapeParts.some((name) => drafts.other[readingDraftKey(readingName(level, name))] !== undefined);
  const known = isConfirmed(now[part]) ? write(now[part].value) : paddingWords.about(write(now[part].value));
  const typed = parseLength(text, unit);
  const reads = typed.ok ? typed.value : now[part].value;
  const wanted = plan.levels.find(({ name }) => name === level)?.body[part].value ?? reads;
  const standing = typed.ok ? "read" : standingOf(now[part]);
  const left = remainingWords({ part, wanted, now: reads, standing }, step);
  const keep = () => {
    keepReadings(store, level);
    const slip = unreadable(store, level);
    if (slip !== null) announce(lengthProblemText(slip, step));
    else if (part === "girth") onPart("frontArc");
  };
  return (
    <section className="reading-pad" aria-label={paddingWords.pad}>
      <p className="reading-pad-into">
        {paddingWords.padInto} <strong>{paddingWords.reading(levelWords[level], tapePartNames[part])}</strong>{" "}
        <span className="reading-pad-echo" aria-hidden>
          {text === "" ? known : `${text} ${unit}`}
        </span>{" "}
        <span className="reading-pad-left" aria-hidden>
          {left}
        </span>
      </p>
      <Segments
        className="reading-pad-parts"
        choices={tapeParts.map((name) => ({
          key: name,
          words: tapePartNames[name],
          isChosen: name === part,
          choose: () => onPart(name),
        }))}
      />
      <FractionPad unit={unit} onKey={usePadInto(key)} />
      <button type="button" className="patch reading-keep" disabled={!hasDrafts} onClick={keep}>
        {paddingWords.keep}
      </button>
    </section>
  );
}
