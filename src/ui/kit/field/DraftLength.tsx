import { lengthFieldState } from "../../../app/session/lengthFieldState";
import { useDispatch, useDraft, useLengths } from "../useStore";
import { LengthField } from "./LengthField";

/** A length that stays a draft until its step is noted. */
export function DraftLength({ draftKey: key, label }: { readonly draftKey: string; readonly label: string }) {
  const { unit, step } = useLengths();
  const dispatch = useDispatch();
  const draft = useDraft("other", key);
  const onDraft = (text: string | null) => dispatch({ does: "draft", of: "other", key, text });
  const state = lengthFieldState({ entry: undefined, draft, unit, step, onDraft, onCommit: () => {} });
  return <LengthField label={label} state={state} />;
}
