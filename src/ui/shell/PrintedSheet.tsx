import { useStore } from "zustand";
import { classOnPaper } from "../kit/sheet/classOnPaper";
import { UsualSheets } from "../kit/sheet/UsualSheets";

/** The usual sheets as they are printed from any place of work; without a plan the place itself is printed. */
export function PrintedSheet() {
  const isClass = useStore(classOnPaper, ({ isWaiting }) => isWaiting);
  return isClass ? null : <UsualSheets />;
}
