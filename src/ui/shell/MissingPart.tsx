import { useEffect, useState } from "react";
import { useStore } from "zustand";
import { reloadWhenKept } from "../kit/shelf/shelf";
import { pageAddress } from "../kit/page";
import { rescueWords } from "../../text/rescue";
import { askForMissing, lateParts } from "../kit/rescue/latePart";

/** In the place of a page that did not arrive. */
export function MissingPage() {
  return (
    <section className="stitched stack" role="alert">
      <h1>{rescueWords.missingTitle}</h1>
      <p>{rescueWords.missing}</p>
      <MissingWays />
      <p className="row">
        <a href={pageAddress("home")}>{rescueWords.home}</a>
        <a href={pageAddress("fittings")}>{rescueWords.fittings}</a>
      </p>
    </section>
  );
}

/** On paper, in the place of a sheet that did not arrive or cannot be worked out. */
export const NoSheet = () => <p className="caution">{rescueWords.missingSheet}</p>;

/** Above the work, where something did not arrive that has no place of its own to say so. */
export function MissingPartsNotice() {
  const isMissing = useStore(
    lateParts,
    ({ missing }) => missing.length > 0 && missing.every((part) => !part.saysItself),
  );
  useEffect(() => {
    const ask = () => void askForMissing();
    window.addEventListener("online", ask);
    return () => window.removeEventListener("online", ask);
  }, []);
  return isMissing ? (
    <div className="notice notice-missing" role="status">
      <p>{rescueWords.missingParts}</p>
      <MissingWays />
    </div>
  ) : null;
}

/** Some browsers remember that a part did not arrive until the page is loaded anew, so that is offered as well. */
function MissingWays() {
  const [isAsking, setAsking] = useState(false);
  const [wasInVain, setInVain] = useState(false);
  const again = async () => {
    setAsking(true);
    setInVain(!(await askForMissing()));
    setAsking(false);
  };
  return (
    <div className="row">
      <button type="button" className="patch" disabled={isAsking} onClick={() => void again()}>
        {rescueWords.again}
      </button>
      {wasInVain && (
        <button type="button" className="patch" onClick={() => reloadWhenKept()}>
          {rescueWords.loadAnew}
        </button>
      )}
    </div>
  );
}
