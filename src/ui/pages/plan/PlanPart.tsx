import type { ReactNode } from "react";
import { phoneQuery, useMediaQuery } from "../../kit/useMediaQuery";

/**
 * A part of the plan under its heading. On a phone it is folded, so that the plan's own sentence fills the first screen; the
 * part that asks something lies open below it.
 */
export interface PlanPartProps {
  readonly title: string;
  readonly className?: string;
  readonly onPhone?: "folded" | "open";
  readonly children: ReactNode;
}

export function PlanPart({ title, className = "", onPhone = "folded", children }: PlanPartProps) {
  const isPhone = useMediaQuery(phoneQuery);
  if (!isPhone || onPhone === "open") {
    return (
      <section className={`stitched ${className}`}>
        <h2>{title}</h2>
        {children}
      </section>
    );
  }
  return (
    <details className={`stitched plan-fold ${className}`}>
      <summary className="fold">
        <h2>{title}</h2>
      </summary>
      {children}
    </details>
  );
}
