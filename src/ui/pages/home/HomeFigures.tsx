import { useMemo } from "react";
import { derivation } from "../../../app/session/derived";
import { demoFitting } from "../../../app/session/demoFitting";
import { Drawing } from "../../drawing/Drawing";
import { standInScene, standInStages } from "../../drawing/standInScene";
import { pictureWords } from "../../../text/pictures";

/** What the work comes to, in three figures of the made-up person's own plan. */
export function HomeFigures() {
  const scenes = useMemo(madeUpScenes, []);
  return (
    <ol className="home-stages">
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
  const { planning } = derivation()(demoFitting);
  if (planning.kind === "waiting") return [];
  const { levels, pieces } = planning.plan;
  return standInStages.map((stage) => ({ stage, scene: standInScene(levels, pieces, stage) }));
}
