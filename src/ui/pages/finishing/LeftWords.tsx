import { useLater } from "../../kit/useSoon";

/**
 * What is left to go, in words. They stand in a place of their own whose height they do not change themselves: it is
 * made anew a frame after them, so that the frame that shows a letter need not lay out the page.
 */
export interface LeftWordsProps {
  /** So that the field beside them is described by them. */
  readonly id: string;
  readonly words: string;
  /** Nobody has read this stretch yet: the words are lighter, and may need less room. */
  readonly isUnread: boolean;
}

export function LeftWords({ id, words, isUnread }: LeftWordsProps) {
  const isLight = useLater(isUnread);
  return (
    <div className={`reading-left-place${isLight ? " reading-left-light" : ""}`} data-words={useLater(words)}>
      <p className="reading-left">
        <span className="reading-mark" aria-hidden />
        <span id={id} className="reading-left-words">
          {words}
        </span>
      </p>
    </div>
  );
}
