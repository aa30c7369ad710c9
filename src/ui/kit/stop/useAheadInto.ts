import { useEffect, useLayoutEffect } from "react";
import { aheadDraftKey } from "../../../app/session/commands";
import { useDispatch, useStoreItself } from "../useStore";

/**
 * What was typed before it was known which reading comes next goes to that one as soon as it is asked, and is never
 * taken for the last one; where no reading comes next nothing asked for it, and it goes.
 */
export function useAheadInto(draftKey: string, isAhead: boolean): void {
  const store = useStoreItself();
  const dispatch = useDispatch();
  // Within the commit that asks the reading: a letter typed right then lands behind the others.
  useLayoutEffect(() => {
    const { [aheadDraftKey]: ahead, [draftKey]: own } = store.getState().fitting.drafts.other;
    if (isAhead || ahead === undefined) return;
    dispatch({ does: "draft", of: "other", key: aheadDraftKey, text: null });
    if (own === undefined) dispatch({ does: "draft", of: "other", key: draftKey, text: ahead });
  }, [store, dispatch, draftKey, isAhead]);
  useEffect(() => () => dispatch({ does: "draft", of: "other", key: aheadDraftKey, text: null }), [dispatch]);
}
