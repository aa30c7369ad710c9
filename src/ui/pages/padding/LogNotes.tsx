import { isLogFull } from "../../../document/fitting";
import { setAsideCount } from "../../../document/keptFitting";
import { paddingWords } from "../../../text/padding";
import { useFitting } from "../../kit/useStore";

/** What is the matter with the log of work: it is full, or entries of it could not be used. */
export function LogNotes() {
  const { work, extra } = useFitting();
  const setAside = setAsideCount({ extra });
  return (
    <>
      {isLogFull(work) ? <p className="caution">{paddingWords.logFull}</p> : null}
      {setAside === 0 ? null : <p className="caution">{paddingWords.setAside(setAside)}</p>}
    </>
  );
}
