import { useCallback, useEffect } from "react";

/** Reads a sentence aloud with the browser's own voice, where there is one; null where there is none. */
export function useSpeech(): ((sentence: string) => void) | null {
  const isThere = "speechSynthesis" in window;
  useEffect(() => () => (isThere ? window.speechSynthesis.cancel() : undefined), [isThere]);
  const speak = useCallback((sentence: string) => {
    window.speechSynthesis.cancel();
    window.speechSynthesis.speak(new SpeechSynthesisUtterance(sentence));
  }, []);
  return isThere ? speak : null;
}
