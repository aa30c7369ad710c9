import { useEffect, useState } from "react";
import { flushSync } from "react-dom";
import { NoSheet } from "./MissingPart";
import { latePart } from "../kit/rescue/latePart";

/** The sheet that is on the page while the browser prints, wherever the person is. */
export const PrintedSheet = latePart(() => import("./PrintedSheet").then(({ PrintedSheet }) => PrintedSheet), NoSheet);

/** Whether the browser is printing, so that the sheet is wanted. */
export function usePrinting(): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    PrintedSheet.fetch();
    // The browser takes its picture as soon as this event is over.
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
    };
  }, []);
  return isPrinting;
}
