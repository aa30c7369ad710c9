import { memo } from "react";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { Drawing } from "../Drawing";
import { measureScene } from "./measureScene";

/** How the tape runs for one measurement, on a person or on the form. */
export interface MeasureFigureProps {
  readonly name: MeasurementName;
  readonly whose: "body" | "form";
}

export const MeasureFigure = memo(function MeasureFigure({ name, whose }: MeasureFigureProps) {
  return <Drawing scene={measureScene(name, whose)} />;
});
