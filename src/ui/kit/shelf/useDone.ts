import { useCallback } from "react";
import type { Command } from "../../../app/session/commands";
import { useAnnounce } from "../Announcer";
import { shelf, type ShelfState } from "./shelf";
import { savedWords } from "../../../text/saved";
import { useStoreItself } from "../useStore";

/** Does a command, and says what was done only where it changed something; tells whether it did. */
export function useDoAndSay(): (command: Command, sentence: string) => boolean {
  const store = useStoreItself();
  const say = useSayDone();
  return (command, sentence) => {
    const before = store.getState().fitting;
    store.dispatch(command);
    const isDone = store.getState().fitting !== before;
    if (isDone) say(sentence);
    return isDone;
  };
}

/** Says what was done to the open fitting, and as soon as the storage refuses it, that it is not saved. */
export function useSayDone(): (sentence: string) => void {
  const announce = useAnnounce();
  return useCallback(
    (sentence) => {
      announce(sentence);
      onRefusal(() => announce(savedWords.notSavedYet));
    },
    [announce],
  );
}

/** A change is being saved within its own event; a refusal that stands from before stays until a save has passed. */
function onRefusal(tell: () => void): void {
  const { autosave } = shelf.getState();
  if (autosave === null) return;
  if (isSettled(shelf.getState(), tell)) return;
  const stop = shelf.subscribe((state) => {
    if (isSettled(state, tell)) stop();
  });
}

function isSettled({ open }: ShelfState, tell: () => void): boolean {
  if (open?.saving.kind === "notSaved") tell();
  return open?.saving.kind === "notSaved" || open?.saving.kind === "saved";
}
