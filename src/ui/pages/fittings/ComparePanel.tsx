import { useState } from "react";
import { type ComparedMeasurement, comparedBodies } from "../../../app/share/comparison";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import type { LengthStep } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { compareWords, libraryWords } from "../../../text/library";
import { measurementTexts } from "../../../text/measurements";
import { HeadCells } from "../../kit/HeadCells";
import { useLengths } from "../../kit/useStore";
import { type ListedEntry, useOpened, useProgress } from "./fittingEntry";
import { dayText } from "../../../text/moment";
import { writtenLength } from "../../../text/writtenLength";

interface CompareProps {
  readonly storage: FittingStorage;
  readonly listed: ListedEntry;
  readonly others: readonly ListedEntry[];
  readonly title: string;
}

/** Two rounds of measuring beside each other: what was read then, what is read now, and what changed. */
export function ComparePanel({ storage, listed, others, title }: CompareProps) {
  const choices = others.filter(({ entry }) => entry.id !== listed.entry.id && entry.deletedAt === null);
  const [chosen, setChosen] = useState(() => likeliest(listed, choices)?.entry.id ?? "");
  const other = choices.find(({ entry }) => entry.id === chosen);
  return (
    <div className="tag-panel stack">
      <h3>{compareWords.title(title)}</h3>
      {choices.length === 0 ? (
        <p className="quiet">{compareWords.none}</p>
      ) : (
        <label className="choice">
          {compareWords.with}
          <select className="line-input" value={chosen} onChange={(event) => setChosen(event.target.value)}>
            {choices.map(({ entry }) => (
              <option key={entry.id} value={entry.id}>
                {entry.title === "" ? libraryWords.untitled : entry.title}, {dayText(entry.changedAt)}
              </option>
            ))}
          </select>
        </label>
      )}
      {other && <Comparison storage={storage} {...inOrder(listed, other)} />}
    </div>
  );
}

interface Rounds {
  readonly earlier: ListedEntry;
  readonly later: ListedEntry;
}

/** What was changed last counts as the later round, whichever of the two was chosen first. */
const inOrder = (one: ListedEntry, other: ListedEntry): Rounds =>
  one.entry.changedAt < other.entry.changedAt ? { earlier: one, later: other } : { earlier: other, later: one };

/** Another round of the same person begins with the same name. */
function likeliest({ entry }: ListedEntry, choices: readonly ListedEntry[]): ListedEntry | undefined {
  const name = (title: string): string => title.split(",")[0]?.trim().toLowerCase() ?? "";
  return choices.find((choice) => name(choice.entry.title) === name(entry.title)) ?? choices[0];
}

function Comparison({ storage, earlier, later }: Rounds & { readonly storage: FittingStorage }) {
  const { step } = useLengths();
  const asks = useProgress(storage, later.entry);
  const before = useOpened(storage, earlier.entry);
  const after = useOpened(storage, later.entry);
  if (before === null || after === null) return <p className="quiet">{libraryWords.loading}</p>;
  const rows = comparedBodies(before, after);
  const changed = rows.filter((row) => changeText(row, step) !== compareWords.same).length;
  const heads = [
    compareWords.reading,
    `${compareWords.before} (${dayText(earlier.entry.changedAt)})`,
    `${compareWords.after} (${dayText(later.entry.changedAt)})`,
    compareWords.change,
  ];
  return (
    <>
      <p>
        {compareWords.summary(changed, rows.length)} {compareWords.asks(asks)}
      </p>
      <table className="compared wide">
        <caption className="unseen">{compareWords.bodies}</caption>
        <thead>
          <tr>
            <HeadCells words={heads} />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{measurementTexts[row.name].label}</th>
              <td>{row.kind === "onlyAfter" ? "" : writtenLength(row.before, step)}</td>
              <td>{row.kind === "onlyBefore" ? "" : writtenLength(row.after, step)}</td>
              <td>{changeText(row, step)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </>
  );
}

function changeText(row: ComparedMeasurement, step: LengthStep): string {
  if (row.kind === "onlyBefore") return compareWords.onlyThen;
  if (row.kind === "onlyAfter") return compareWords.onlyNow;
  const size = writtenLength(Math.abs(row.change) as Millimetres, step);
  if (writtenLength(row.before, step) === writtenLength(row.after, step)) return compareWords.same;
  return row.change > 0 ? `+ ${size}` : `− ${size}`;
}
