import { readingDraftKey } from "../../app/commands";
import { readingName, type TapePart, tapeParts } from "../../app/padProgress";
import type { LevelName } from "../../core/body/vocabulary";
import { FractionPad } from "../field/FractionPad";
import { paddingWords, tapePartNames } from "../text/padding";
import { levelWords } from "../text/pictures";
import { useDispatch, useFitting, useStoreItself } from "../useStore";
import { keepReadings } from "./useReadingsKept";

/** The pad of the padding bench: it writes into the stretch at hand, and keeps what was written at one press. */
export function ReadingPad({ level, part }: { readonly level: LevelName; readonly part: TapePart }) {
  const { drafts, unit } = useFitting();
  const dispatch = useDispatch();
  const store = useStoreItself();
  const key = readingDraftKey(readingName(level, part));
  const text = drafts.other[key] ?? "";
  const hasDrafts = tapeParts.some((name) => drafts.other[readingDraftKey(readingName(level, name))] !== undefined);
  return (
    <section className="reading-pad" aria-label={paddingWords.pad}>
      <p className="reading-pad-into">
        {paddingWords.padInto} <strong>{paddingWords.reading(levelWords[level], tapePartNames[part])}</strong>
      </p>
      <FractionPad
        unit={unit}
        text={text}
        untouched={text === ""}
        onText={(next) => dispatch({ does: "draft", of: "other", key, text: next === "" ? null : next })}
      />
      <button
        type="button"
        className="patch reading-keep"
        disabled={!hasDrafts}
        onClick={() => keepReadings(store, level)}
      >
        {paddingWords.keep}
      </button>
    </section>
  );
}
