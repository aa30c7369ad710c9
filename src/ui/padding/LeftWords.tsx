import { useLater } from "../useSoon";

/**
 * What is left to go, in words. They stand in a place of their own whose height they do not change themselves: it is
 * made anew a frame after them, so that the frame that shows a letter need not lay out the page.
 */
export function LeftWords({ words }: { readonly words: string }) {
  return (
    <div className="reading-left-place" data-words={useLater(words)}>
      <p className="reading-left">
        <span className="reading-mark" aria-hidden />
        {words}
      </p>
    </div>
  );
}
