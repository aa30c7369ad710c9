import { paddingWords } from "../text/padding";
import { useSpeech } from "./useSpeech";

/** Reads the action at hand aloud, where the browser has a voice. */
export function SpeakButton({ sentence }: { readonly sentence: string }) {
  const speak = useSpeech();
  if (speak === null) return null;
  return (
    <button type="button" className="patch" onClick={() => speak(sentence)}>
      {paddingWords.speak}
    </button>
  );
}
