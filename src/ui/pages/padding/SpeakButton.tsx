import { paddingWords } from "../../../text/padding";
import { useSpeech } from "./useSpeech";

/** Reads the action at hand aloud, where the browser has a voice. */
export function SpeakButton({ sentence }: { readonly sentence: string }) {
  const speak = useSpeech();
  if (speak === null) return null;
  return (
    <button type="button" className="stop-speak" aria-label={paddingWords.speak} onClick={() => speak(sentence)}>
      <svg width="26" height="22" viewBox="0 0 26 22" aria-hidden focusable="false">
        <path
          d="M2 8V14H6L12 19V3L6 8ZM16 7Q19 11 16 15M19 4Q25 11 19 18"
          fill="none"
          stroke="currentColor"
          strokeWidth="2.2"
        />
      </svg>
    </button>
  );
}
