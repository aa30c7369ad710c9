import { useMemo } from "react";
import type { BattingLayout } from "../../../app/supplies/battingLayout";
import { layoutWords } from "../../../text/supplies";
import { Drawing } from "../../drawing/Drawing";
import { battingScenes } from "../../drawing/layoutScene";
import { useLengths } from "../useStore";
import { useLetters } from "./useLetters";
import "./supplies.css";

interface LayoutPictureProps {
  readonly layout: BattingLayout;
  readonly name: string;
  /** How many times smaller than the layout its letters are; as large as the screen asks for if left out. */
  readonly lettersAs?: number;
}

/** Each packet or the roll with every layer where it lies; a long roll goes on below. */
export function LayoutPicture({ layout, name, lettersAs }: LayoutPictureProps) {
  const { unit, step } = useLengths();
  const onScreen = useLetters();
  const letters = lettersAs ?? onScreen;
  const scenes = useMemo(
    () => layout.sheets.flatMap((sheet) => battingScenes(sheet, layoutWords(sheet, name, layout, unit, step), letters)),
    [layout, name, unit, step, letters],
  );
  return (
    <div className="layout-pictures">
      {scenes.map((scene) => (
        <Drawing key={`${scene.frame.x} ${scene.marks.map(({ path }) => path).join("")}`} scene={scene} />
      ))}
    </div>
  );
}
