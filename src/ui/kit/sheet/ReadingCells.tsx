import { readingName } from "../../../app/progress/padProgress";
import { readAbove } from "../../../app/above/madeAbove";
import { readingsOfPlace } from "../../../app/steps/placeReadings";
import type { Step } from "../../../app/steps/step";
import type { BuildAbove } from "../../../core/above/buildAbove";
import { writtenLength } from "../../../text/writtenLength";
import { mm } from "../../../core/units";
import { aboveReadingLabel } from "../../../text/above";
import { levelWords } from "../../../text/pictures";
import { printingWords } from "../../../text/printing";
import { HeadCells } from "../HeadCells";
import { useFitting, useLengths } from "../useStore";

interface Row {
  readonly head: string;
  readonly cells: readonly { readonly expected: number | undefined; readonly read: number | undefined }[];
}

/** A cell for every reading, with what is expected in its corner; what was read already is filled in. */
function ReadingCells({ heads, rows }: { readonly heads: readonly string[]; readonly rows: readonly Row[] }) {
  const { step } = useLengths();
  const bare = (value: number | undefined) => (value === undefined ? "" : writtenLength(mm(value), step, "bare"));
  return (
    <table className="sheet-table sheet-readings-room">
      <thead>
        <tr>
          <HeadCells words={heads} />
        </tr>
      </thead>
      <tbody>
        {rows.map(({ head, cells }) => (
          <tr key={head}>
            <th scope="row">{head}</th>
            {cells.map(({ expected, read }, i) => (
              <td key={heads[i + 1]}>
                <span>{bare(expected)}</span> {bare(read)}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const parts = ["girth", "frontArc"] as const;
const { readHead } = printingWords;

/** For every reading over the cover. */
export function CoverReadingCells({ step: { levels, expected } }: { readonly step: Step }) {
  const fitting = useFitting();
  return (
    <ReadingCells
      heads={[readHead.expectRead, ...levels.map((level) => levelWords[level])]}
      rows={parts.map((part) => ({
        head: readHead[part],
        cells: levels.map((level) => {
          const name = readingName(level, part);
          return { expected: expected[name], read: readingsOfPlace(fitting, name, "cover").at(-1)?.length };
        }),
      }))}
    />
  );
}

/** For what the tape reads over a build above the bust. */
export function AboveReadingCells({ build }: { readonly build: BuildAbove }) {
  const fitting = useFitting();
  const { act, readings } = build;
  if (act.what !== "layers") return null;
  const read = readAbove(build.id, fitting) ?? {};
  return (
    <ReadingCells
      heads={["", ...act.asks.map(aboveReadingLabel)]}
      rows={[
        {
          head: readHead.expectRead,
          cells: act.asks.map((name) => ({
            expected: readings.find((reading) => reading.name === name)?.after,
            read: read[name],
          })),
        },
      ]}
    />
  );
}
