import type { ClassPerson } from "../../../app/classView/classPeople";
import type { ClassView } from "../../../app/classView/classView";
import { stepNoteWords } from "../../../text/stepNotes";
import { namesNumber } from "../../../text/withoutFigures";
import { pageAddress } from "../../kit/page";
import { ClassPanel } from "./ClassPanel";

interface NoteProps {
  readonly person: ClassPerson;
  readonly view: ClassView;
  readonly onClose: () => void;
}

/** The teacher's own note to the step at hand; it goes along when the step does. */
export function ClassNote({ person, view, onClose }: NoteProps) {
  const { note, isCovered } = view;
  // A note in somebody's own words may say a length in any way: whatever holds a number is hidden whole.
  const isHidden = note !== null && isCovered && namesNumber(note);
  const none = person.takeHome === null ? stepNoteWords.none : stepNoteWords.madeUpNone;
  return (
    <ClassPanel
      id="class-note-title"
      title={stepNoteWords.here}
      className="class-session class-note-panel"
      onClose={onClose}
    >
      <p className="class-note" aria-live="polite">
        {isHidden ? stepNoteWords.covered : (note ?? none)}
      </p>
      <a className="patch" href={pageAddress("print", "notes")}>
        {stepNoteWords.toTyping}
      </a>
    </ClassPanel>
  );
}
