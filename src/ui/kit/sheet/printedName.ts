import { createContext, useContext } from "react";
import { useFittingState } from "../useStore";

/** Whether the sheets carry the name of the fitting; where they do not, no page of them says whose it is. */
export const NamePrinted = createContext(true);

export function usePrintedName(): string {
  const isPrinted = useContext(NamePrinted);
  const title = useFittingState(({ fitting }) => fitting.title);
  return isPrinted ? title : "";
}
