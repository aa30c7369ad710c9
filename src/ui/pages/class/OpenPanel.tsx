import type { ComponentProps } from "react";
import type { ClassPerson } from "../../../app/classView/classPeople";
import type { ClassAction, ClassKey } from "../../../app/classView/classState";
import type { ClassView } from "../../../app/classView/classView";
import { ClassNote } from "./ClassNote";
import { ClassHelp, ClassTakeHome } from "./ClassPanel";
import { ClassRemotePanel } from "./ClassRemotePanel";
import { ClassSession } from "./ClassSession";
import type { ClassRemote } from "./useClassRemote";
import type { ClassTimer } from "./useClassTimer";

const panelNames = ["keys", "takeHome", "session", "note", "remote"] as const;
export type PanelName = (typeof panelNames)[number] | "none";

/** Whether a key opens a panel, or closes it. */
export const isPanel = (key: ClassKey): key is ClassKey & { readonly does: (typeof panelNames)[number] } =>
  (panelNames as readonly string[]).includes(key.does);

/** A panel that hides the work goes when the work moves on; the session plan and the note go along with it. */
export const panelAfterMove = (open: PanelName, { does }: ClassAction): PanelName =>
  moves.includes(does) && hiding.includes(open) ? "none" : open;

const moves: readonly string[] = ["forward", "back", "first", "last"];
const hiding: readonly PanelName[] = ["takeHome", "keys", "remote"];

interface PanelProps {
  readonly open: PanelName;
  readonly person: ClassPerson;
  readonly view: ClassView;
  readonly timer: ClassTimer;
  readonly remote: ClassRemote;
  readonly letters: Pick<ComponentProps<typeof ClassHelp>, "lettersWork" | "onLetters">;
  readonly onOpen: (panel: PanelName) => void;
}

/** The panel that lies over the class view, if one does. */
export function OpenPanel({ open, person, view, timer, remote, letters, onOpen }: PanelProps) {
  const close = () => onOpen("none");
  if (open === "session") return <ClassSession job={person.job} view={view} timer={timer} onClose={close} />;
  if (open === "note") return <ClassNote person={person} view={view} onClose={close} />;
  if (open === "remote") return <ClassRemotePanel remote={remote} onClose={close} />;
  if (open === "keys")
    return (
      <ClassHelp {...letters} onTakeHome={person.takeHome === null ? null : () => onOpen("takeHome")} onClose={close} />
    );
  if (open === "takeHome" && person.takeHome !== null)
    return <ClassTakeHome fitting={person.takeHome} onClose={close} />;
  return null;
}
