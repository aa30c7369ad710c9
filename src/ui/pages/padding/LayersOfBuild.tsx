import { useMemo } from "react";
import type { BuildAbove } from "../../../core/above/buildAbove";
import { Drawing } from "../../drawing/Drawing";
import { flatPartsScene } from "../../drawing/flatPartsScene";

/** The layers of what is built above the bust, the smallest first, as they are cut. */
export function LayersOfBuild({ build: { act }, title }: { readonly build: BuildAbove; readonly title: string }) {
  const scene = useMemo(
    () => (act.what === "layers" ? flatPartsScene(act.layers, { title, names: [] }) : null),
    [act, title],
  );
  return scene === null ? null : <Drawing scene={scene} />;
}
