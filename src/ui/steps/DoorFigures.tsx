import { useMemo } from "react";
import demoFile from "../../../shared/demo-fitting.json";
import { derivation } from "../../app/derived";
import { readFitting } from "../../document/fitting";
import { Drawing } from "../drawing/Drawing";
import { standInScene, standInStages } from "../drawing/standInScene";
import { pictureWords } from "../text/pictures";

/** What the work comes to, in three figures of the made-up person's own plan. */
export function DoorFigures() {
  const scenes = useMemo(madeUpScenes, []);
  return (
    <ol className="door-stages">
      {scenes.map(({ stage, scene }) => (
        <li key={stage}>
          <figure>
            <Drawing scene={scene} hidden />
            <figcaption className="quiet small">{pictureWords.standIn[stage]}</figcaption>
          </figure>
        </li>
      ))}
    </ol>
  );
}

function madeUpScenes() {
  const fitting = readFitting(demoFile);
  if (!fitting.ok) return [];
  const { planning } = derivation()(fitting.value);
  if (planning.kind === "waiting") return [];
  const { levels, pieces } = planning.plan;
  return standInStages.map((stage) => ({ stage, scene: standInScene(levels, pieces, stage) }));
}
