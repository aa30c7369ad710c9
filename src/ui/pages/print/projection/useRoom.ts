import { type RefObject, useLayoutEffect, useState } from "react";

interface Room {
  readonly width: number;
  readonly height: number;
}

/** How large the place for the picture is (px): it grows when the bar goes, and with the window. */
export function useRoom(stage: RefObject<HTMLDivElement | null>, hasBar: boolean): Room {
  const [room, setRoom] = useState<Room>({ width: 0, height: 0 });
  // biome-ignore lint/correctness/useExhaustiveDependencies: without the bar there is more room.
  useLayoutEffect(() => {
    const look = () => {
      const { clientWidth: width = 0, clientHeight: height = 0 } = stage.current ?? {};
      setRoom((now) => (now.width === width && now.height === height ? now : { width, height }));
    };
    look();
    const watcher = new ResizeObserver(look);
    if (stage.current !== null) watcher.observe(stage.current);
    return () => watcher.disconnect();
  }, [stage, hasBar]);
  return room;
}
