import { type ReactNode, useEffect, useRef, useState } from "react";
import { type MeasurementName, measurementNames, requiredMeasurementNames } from "../../../core/body/vocabulary";
import { useAskedThing } from "../page";
import { improvementGroups, measuringWords } from "../../../text/measuring";
import { useMediaQuery, wideQuery } from "../useScreen";
import { questionsWords } from "../../../text/questions";
import { shownLength } from "../../../text/shownLength";
import { useFitting, useLengths } from "../useStore";
import { MeasureBench } from "./MeasureBench";
import { bodyGroups, formGroups, type MeasureGroup, measurementAfter } from "../../../app/progress/measureGroups";
import { MeasureRow } from "./MeasureRow";

/**
 * The measuring chart and, beside it, the bench with the one measurement at hand. On a narrow screen the bench opens
 * under its row. The same chart serves the body and the form.
 */
interface MeasureChartProps {
  readonly whose: "body" | "form";
  /** What stands between the girths and the other readings once the girths are in. */
  readonly enough?: ReactNode;
}

export function MeasureChart({ whose, enough }: MeasureChartProps) {
  const groups = whose === "body" ? bodyGroups : formGroups;
  const entries = useFitting()[whose];
  const isKnown = (name: MeasurementName): boolean => entries[name] !== undefined;
  const isWide = useMediaQuery(wideQuery);
  const firstMissing = requiredMeasurementNames.find((name) => !isKnown(name));
  const asked = useAskedMeasurement();
  const [chosen, setChosen] = useState<MeasurementName | null>(
    asked ?? firstMissing ?? (isWide ? (measurementAfter(groups, "fullHipGirth", isKnown) ?? null) : null),
  );
  const [focusTurn, setFocusTurn] = useState(0);
  const [isByKeyboard, setByKeyboard] = useState(false);
  const rows = useRef<HTMLDivElement>(null);

  useEffect(() => {
    if (asked === null) return;
    setChosen(asked);
    setFocusTurn((turn) => turn + 1);
  }, [asked]);

  const choose = (name: MeasurementName | null) => {
    setChosen(name);
    setFocusTurn((turn) => turn + 1);
  };
  const goBackToRow = () => rows.current?.querySelector<HTMLElement>(`[data-measurement="${chosen ?? ""}"]`)?.focus();

  const bench = (name: MeasurementName) => {
    const next = measurementAfter(groups, name, isKnown);
    return (
      <MeasureBench
        key={name}
        whose={whose}
        name={name}
        next={next}
        focusTurn={focusTurn}
        isByKeyboard={isByKeyboard}
        onByKeyboard={setByKeyboard}
        onNext={() => choose(next ?? name)}
        onLeave={goBackToRow}
      />
    );
  };

  return (
    <div className="chart-and-bench">
      <div className="chart" ref={rows}>
        {groups.map((group) => (
          <ChartGroup
            key={group.improves}
            group={group}
            isOpenFromStart={groups.indexOf(group) < openFromStart}
            isKnown={isKnown}
            chosen={chosen}
          >
            {group.names.map((name) => (
              <MeasureRow key={name} whose={whose} name={name} isChosen={chosen === name} onChoose={() => choose(name)}>
                {!isWide && chosen === name ? bench(name) : null}
              </MeasureRow>
            ))}
            {group.improves === "wholePlan" && firstMissing === undefined ? enough : null}
          </ChartGroup>
        ))}
      </div>
      {isWide && chosen !== null ? <aside className="bench-side">{bench(chosen)}</aside> : null}
    </div>
  );
}

/** The measurement somebody came here for, as the address names it. */
function useAskedMeasurement(): MeasurementName | null {
  const asked = useAskedThing();
  return measurementNames.find((name) => name === asked) ?? null;
}

interface ChartGroupProps {
  readonly group: MeasureGroup;
  readonly isOpenFromStart: boolean;
  readonly isKnown: (name: MeasurementName) => boolean;
  readonly chosen: MeasurementName | null;
  readonly children: ReactNode;
}

/** So many groups lie open from the start: the girths, and the two that bring most. */
const openFromStart = 3;

/** The first groups lie open; the others open when asked, or when the work arrives there. */
function ChartGroup({ group, isOpenFromStart, isKnown, chosen, children }: ChartGroupProps) {
  const { title, buys } = improvementGroups[group.improves];
  const { step } = useLengths();
  const holdsChosen = chosen !== null && group.names.includes(chosen);
  const [isOpen, setOpen] = useState(isOpenFromStart || holdsChosen);
  useEffect(() => {
    if (holdsChosen) setOpen(true);
  }, [holdsChosen]);
  const known = group.names.filter(isKnown).length;
  return (
    <details className="chart-group" open={isOpen} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="chart-summary">
        <span className="chart-title">{title}</span>
        <span className="chart-count">{measuringWords.countIn(known, group.names.length)}</span>
        <span className="chart-buys">
          {buys} {group.gain === null ? null : questionsWords.brings(shownLength(group.gain, step))}
        </span>
      </summary>
      <ul className="chart-rows">{children}</ul>
    </details>
  );
}
