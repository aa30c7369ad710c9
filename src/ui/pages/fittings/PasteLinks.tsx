import { useState } from "react";
import { linksIn } from "../../../app/share/linkImport";
import type { Autosave } from "../../../app/storage/autosave";
import { intakeWords } from "../../../text/files";
import { IntakeSaid } from "../../kit/shelf/OpenFile";
import { useIntake } from "../../kit/shelf/useIntake";

interface PasteProps {
  readonly autosave: Autosave;
  /** The names on the list, so that a copy gets one of its own. */
  readonly titles: readonly string[];
}

/** Takes the fittings of a whole class in from the links they sent; what could not all be taken stays to be mended. */
export function PasteLinks({ autosave, titles }: PasteProps) {
  const intake = useIntake(autosave, titles);
  const [text, setText] = useState("");
  const [isBusy, setBusy] = useState(false);
  const links = linksIn(text);
  const add = async () => {
    setBusy(true);
    const areAllTaken = await intake.openLinks(links);
    setBusy(false);
    if (areAllTaken) setText("");
  };
  return (
    <>
      <label className="name-field wide">
        {intakeWords.links}
        <textarea
          className="line-input"
          rows={3}
          value={text}
          readOnly={isBusy}
          spellCheck={false}
          onChange={({ target }) => setText(target.value)}
        />
      </label>
      <div className="row">
        <button type="button" className="patch" disabled={links.length === 0 || isBusy} onClick={() => void add()}>
          {intakeWords.addLinks(links.length)}
        </button>
      </div>
      <IntakeSaid intake={intake} />
    </>
  );
}
