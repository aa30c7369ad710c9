import type { ComponentProps } from "react";
import type { ClassPerson } from "../../../app/classView/classPeople";
import type { ClassView } from "../../../app/classView/classView";
import { ClassHelp, ClassTakeHome } from "./ClassPanel";
import { ClassSession } from "./ClassSession";
import type { ClassTimer } from "./useClassTimer";

export type PanelName = "none" | "keys" | "takeHome" | "session";

interface PanelProps {
  readonly open: PanelName;
  readonly person: ClassPerson;
  readonly view: ClassView;
  readonly timer: ClassTimer;
  readonly letters: Pick<ComponentProps<typeof ClassHelp>, "lettersWork" | "onLetters">;
  readonly onOpen: (panel: PanelName) => void;
}

/** The panel that lies over the class view, if one does. */
export function OpenPanel({ open, person, view, timer, letters, onOpen }: PanelProps) {
  const close = () => onOpen("none");
  if (open === "session") return <ClassSession job={person.job} view={view} timer={timer} onClose={close} />;
  if (open === "keys")
    return (
      <ClassHelp {...letters} onTakeHome={person.takeHome === null ? null : () => onOpen("takeHome")} onClose={close} />
    );
  if (open === "takeHome" && person.takeHome !== null)
    return <ClassTakeHome fitting={person.takeHome} onClose={close} />;
  return null;
}
