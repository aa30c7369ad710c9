import { readingName } from "../../../app/progress/padProgress";
import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { Step } from "../../../app/steps/step";
import { mm } from "../../../core/units";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { HeadCells } from "../HeadCells";
import { useFitting, useLengths } from "../useStore";
import { writtenLength } from "../../../text/writtenLength";

const parts = ["girth", "frontArc"] as const;

/** A cell for every reading over the cover, with what is expected in its corner; what was read already is filled in. */
export function CoverReadingCells({ step: { levels, expected } }: { readonly step: Step }) {
  const { step } = useLengths();
  const fitting = useFitting();
  const { readHead } = printingWords;
  const bare = (value: number | undefined) => (value === undefined ? "" : writtenLength(mm(value), step, "bare"));
  return (
    <table className="sheet-table sheet-cover-readings">
      <thead>
        <tr>
          <HeadCells words={[readHead.expectRead, ...levels.map((level) => levelWords[level])]} />
        </tr>
      </thead>
      <tbody>
        {parts.map((part) => (
          <tr key={part}>
            <th scope="row">{readHead[part]}</th>
            {levels.map((level) => {
              const name = readingName(level, part);
              return (
                <td key={level}>
                  <span>{bare(expected[name])}</span> {bare(readingsOfPlace(fitting, name, "cover").at(-1)?.length)}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
