import type { LeftToDo } from "../app/session/leftToDo";
import { progressTexts } from "./library";
import { measurementInSentence } from "./measurements";

/** What is left to do in a fitting of the list, in a few words. */
export function leftToDoText(left: LeftToDo): string {
  switch (left.kind) {
    case "unmeasured":
    case "waiting":
    case "nothing":
      return progressTexts[left.kind];
    case "girths":
      return progressTexts.girthsLeft(left.names.map((name) => measurementInSentence(name)));
    case "planned":
      return progressTexts.planned(left.all);
    case "pinned":
    case "stopHere":
      return progressTexts[left.kind](left.pinned, left.all);
    case "allPinned":
      return progressTexts.allPinned[left.how](left.all);
  }
}
