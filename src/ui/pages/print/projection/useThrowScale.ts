import { useEffect, useState } from "react";
import { isThrow } from "../../../../app/patterns/projection";
import { useShelf } from "../../../kit/shelf/shelf";

/** What a pixel of an ordinary screen measures (mm), until the bar has been measured. */
const screenPixel = 25.4 / 96;

export interface ThrowScale {
  readonly mmPerPixel: number;
  readonly isMeasured: boolean;
  readonly change: (mmPerPixel: number) => void;
}

/**
 * What one pixel of the picture measures on the table, kept on this device: by the pixels of the projector, so that a browser that
 * enlarges its pages changes nothing.
 */
export function useThrowScale(): ThrowScale {
  const storage = useShelf(({ autosave }) => autosave?.context.storage ?? null);
  const [perDot, setPerDot] = useState<number | null>(null);
  const dots = useDotsPerPixel();
  useEffect(() => {
    let isStale = false;
    void storage?.settings().then((settings) => {
      const kept = settings[settingName];
      if (!isStale && typeof kept === "number" && isThrow(kept)) setPerDot((now) => now ?? kept);
    });
    return () => {
      isStale = true;
    };
  }, [storage]);
  return {
    mmPerPixel: perDot === null ? screenPixel : perDot * dots,
    isMeasured: perDot !== null,
    change: (mmPerPixel) => {
      const next = mmPerPixel / dots;
      if (!isThrow(next)) return;
      setPerDot(next);
      void storage?.saveSettings({ [settingName]: next });
    },
  };
}

const settingName = "projectionMmPerDot";

function useDotsPerPixel(): number {
  const [dots, setDots] = useState(() => window.devicePixelRatio || 1);
  useEffect(() => {
    const look = () => setDots(window.devicePixelRatio || 1);
    window.addEventListener("resize", look);
    return () => window.removeEventListener("resize", look);
  }, []);
  return dots;
}
