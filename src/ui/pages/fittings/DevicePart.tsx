import { useEffect, useState } from "react";
import type { Autosave } from "../../../app/storage/autosave";
import { type KeepAnswer, keepAnswer } from "../../../app/storage/room";
import { useAnnounce } from "../../kit/Announcer";
import { LanguageLink } from "../../kit/LanguageLink";
import { newFitting } from "../../../app/session/newFitting";
import { languageWords } from "../../../text/language";
import { deviceWords } from "../../../text/library";
import { useUnit } from "../../kit/useStore";
import { refusalOf } from "../../../text/fileSentences";
import { forget, listMayHaveChanged, useShelf } from "../../kit/shelf/shelf";

/** What this device does for the fittings: opening without a network, keeping them, and forgetting everything. */
export function DevicePart({ autosave }: { readonly autosave: Autosave }) {
  const offline = useShelf((state) => state.offline);
  const isKept = useShelf(({ open }) => open?.saving.kind === "saved");
  const [answer, setAnswer] = useState<KeepAnswer | null>(null);
  useEffect(() => {
    if (isKept) void keepAnswer(navigator.storage).then(setAnswer);
  }, [isKept]);
  return (
    <section className="stitched stack">
      <h2>{deviceWords.title}</h2>
      <p>{deviceWords.offline[offline.kind]}</p>
      {answer !== null && <p>{deviceWords.kept[answer]}</p>}
      <p>
        {languageWords.title}: <LanguageLink page="fittings" />
      </p>
      <EraseEverything autosave={autosave} />
    </section>
  );
}

function EraseEverything({ autosave }: { readonly autosave: Autosave }) {
  const unit = useUnit();
  const announce = useAnnounce();
  const [isAsked, setAsked] = useState(false);
  const [said, setSaid] = useState("");
  const erase = async () => {
    setAsked(false);
    const outcome = await autosave.eraseEverything(newFitting(unit));
    if (outcome.kind === "erased") forget("gone");
    const sentence = refusalOf(outcome) ?? deviceWords.erased;
    setSaid(sentence);
    announce(sentence);
    autosave.context.channel.send({ kind: "listChanged" });
    listMayHaveChanged();
  };
  return (
    <div className="stack">
      <p className="quiet small">{deviceWords.eraseAllNote}</p>
      <div className="row">
        {isAsked ? (
          <>
            {/* Where the finger was just now, nothing is deleted. */}
            <button type="button" className="patch" onClick={() => setAsked(false)}>
              {deviceWords.keep}
            </button>
            <button type="button" className="patch" onClick={() => void erase()}>
              {deviceWords.eraseAllSure}
            </button>
          </>
        ) : (
          <button type="button" className="patch" onClick={() => setAsked(true)}>
            {deviceWords.eraseAll}
          </button>
        )}
      </div>
      {said !== "" && <p className="caution">{said}</p>}
    </div>
  );
}
