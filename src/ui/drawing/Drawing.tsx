import { memo, useId } from "react";
import { number } from "./pathText";
import type { Label, Scene } from "./scene";

/**
 * A scene as SVG. The picture carries its title and description for screen readers, takes its lines and tints from
 * the style sheet by role, and scales with the width it is given. At true size it is as many millimetres wide on paper
 * as the scene says.
 */
interface DrawingProps {
  readonly scene: Scene;
  readonly size?: "fitted" | "true";
  /** Only for a picture beside words that say the same. */
  readonly hidden?: boolean;
}

export const Drawing = memo(function Drawing({ scene, size = "fitted", hidden = false }: DrawingProps) {
  const id = useId();
  const { frame } = scene;
  const naming = hidden
    ? ({ "aria-hidden": true } as const)
    : ({ role: "img", "aria-labelledby": `${id}t`, "aria-describedby": `${id}d` } as const);
  const trueSize = size === "true" ? { width: `${number(frame.width)}mm`, height: `${number(frame.height)}mm` } : {};
  return (
    <svg
      className="drawing"
      viewBox={[frame.x, frame.y, frame.width, frame.height].map(number).join(" ")}
      fontSize={number(scene.textSize)}
      {...trueSize}
      {...naming}
    >
      {hidden ? null : <title id={`${id}t`}>{scene.title}</title>}
      {hidden ? null : <desc id={`${id}d`}>{scene.description}</desc>}
      {scene.marks.map(({ role, path, shift }, i) =>
        // The order of marks is their identity: scenes of one kind list the same marks in the same order.
        path === "" ? null : (
          <path
            key={`${role}${String(i)}`}
            className={`mark-${role}`}
            d={path}
            transform={shift === undefined ? undefined : `translate(${number(shift)})`}
          />
        ),
      )}
      {scene.labels.map((item, i) => (
        <Words key={`${item.text}${String(i)}`} item={item} />
      ))}
    </svg>
  );
});

const Words = memo(function Words({ item }: { readonly item: Label }) {
  return (
    <text
      className={`words-${item.role}`}
      x={number(item.x)}
      y={number(item.y)}
      textAnchor={item.anchor}
      dominantBaseline="central"
      aria-hidden
    >
      {item.text}
    </text>
  );
});
