import { whereWorkStands } from "../../app/progress/whereWorkStands";
import { goTo } from "./page";
import { useStoreItself } from "./useStore";

/** The way back to the work, wherever it was left in the fitting that is open when it is taken. */
export function useGoOn(): () => void {
  const store = useStoreItself();
  return () => goTo(whereWorkStands(store.getState().fitting));
}
