import { type ComponentType, useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** The sheet to put on the page while the browser prints, wherever the person is; null the rest of the time. */
export function usePrintedSheet(): ComponentType | null {
  const [sheet, setSheet] = useState<ComponentType | null>(null);
  const [isPrinting, setPrinting] = useState(false);

  useEffect(() => {
    let isGone = false;
    void import("./print/PrintedSheet").then(
      ({ PrintedSheet }) => {
        if (!isGone) setSheet(() => PrintedSheet);
      },
      () => {},
    );
    // The browser takes its picture as soon as this event is over.
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    return () => {
      isGone = true;
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
    };
  }, []);

  return isPrinting ? sheet : null;
}
