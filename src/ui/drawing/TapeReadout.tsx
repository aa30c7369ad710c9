import { memo } from "react";
import { pictureWords } from "../../text/pictures";
import { Drawing } from "./Drawing";
import type { LengthWriter } from "./lengthWriter";
import { tapeSpan } from "./tapeScene";
import { useTapeScene } from "./useTapeScene";

/**
 * What the tape reads at one level and what it has to read: all round, in front and behind, each as digits and as a length
 * on a drawn tape. The words for the state come from whoever shows it; nothing here decides what is near enough.
 */
export interface TapeReadoutRow {
  readonly id: string;
  readonly name: string;
  readonly wanted: number;
  readonly isEstimated: boolean;
  readonly now: number | null;
  /** What the bare form read, which sets how much of the tape is shown. */
  readonly bare: number;
  readonly state: "unread" | "toGo" | "there" | "over";
  /** What is left, as the person reads it: "16 mm to go", "there", "3 mm over: ease the last layer". */
  readonly words: string;
}

export interface TapeReadoutProps {
  readonly label: string;
  readonly rows: readonly TapeReadoutRow[];
  readonly lengths: LengthWriter;
}

export function TapeReadout({ label, rows, lengths }: TapeReadoutProps) {
  const span = tapeSpan(rows.map(({ wanted, bare }) => wanted - bare));
  return (
    <section className="tape-readout" aria-label={label}>
      {rows.map((row) => (
        <TapeRow key={row.id} {...row} span={span} lengths={lengths} />
      ))}
    </section>
  );
}

interface TapeRowProps extends TapeReadoutRow {
  readonly span: number;
  readonly lengths: LengthWriter;
}

const TapeRow = memo(function TapeRow({ name, wanted, isEstimated, now, state, words, span, lengths }: TapeRowProps) {
  const scene = useTapeScene({ name, wanted, now, isEstimated, span, words, lengths });
  return (
    <div className="tape-row" data-state={state}>
      <p className="tape-name">{name}</p>
      <dl className="tape-figures">
        <div>
          <dt>{pictureWords.wanted}</dt>
          <dd>{isEstimated ? pictureWords.about(lengths.write(wanted)) : lengths.write(wanted)}</dd>
        </div>
        <div>
          <dt>{pictureWords.now}</dt>
          <dd>{now === null ? pictureWords.notRead : lengths.write(now)}</dd>
        </div>
      </dl>
      <p className="tape-left">{words}</p>
      <div className="tape-picture">
        <Drawing scene={scene} hidden />
      </div>
    </div>
  );
});
