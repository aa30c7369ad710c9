import type { ReactNode } from "react";

/** One of a few: what it says, whether it is the one now, and what a press does. */
interface Segment {
  readonly key: string;
  readonly words: ReactNode;
  readonly isChosen: boolean;
  readonly choose: () => void;
}

interface SegmentsProps {
  readonly choices: readonly Segment[];
  readonly className?: string;
}

/** A few choices side by side, of which one is pressed. */
export const Segments = ({ choices, className = "" }: SegmentsProps) => (
  <div className={`segments ${className}`.trim()}>
    {choices.map(({ key, words, isChosen, choose }) => (
      <button key={key} type="button" className="segment" aria-pressed={isChosen} onClick={choose}>
        {words}
      </button>
    ))}
  </div>
);
