import { useRef, useState } from "react";
import { trialDraftKeys } from "../../app/commands";
import type { BattingRole } from "../../core/material";
import { parseLength } from "../../core/lengthText";
import { type Millimetres, mm } from "../../core/units";
import { trialWords } from "../text/learning";
import { thinText } from "../text/thinText";
import { useDoAndSay } from "../useDone";
import { useDrafts, useFitting } from "../useStore";
import { TrialAnswer } from "./TrialAnswer";
import { TrialField, TrialPad } from "./TrialField";

const moments = ["before", "after"] as const;

/** The trial of one layer: the waist before and after, and what that says a layer is worth. */
export function TrialBench() {
  const [moment, setMoment] = useState<(typeof moments)[number]>("before");
  const [role, setRole] = useState<BattingRole>("building");
  const trial = useTrial(role);
  const fields = { before: useRef<HTMLInputElement>(null), after: useRef<HTMLInputElement>(null) };
  return (
    <div className="trial">
      <p className="trial-how">{trialWords.how}</p>
      <TrialBatting role={role} onRole={setRole} />
      <div className="trial-entry">
        <div className="trial-fields">
          {moments.map((name) => (
            <TrialField
              key={name}
              moment={name}
              inputRef={fields[name]}
              onActive={() => setMoment(name)}
              onEnter={name === "before" ? () => fields.after.current?.focus() : trial.learn}
            />
          ))}
        </div>
        <TrialPad moment={moment} />
      </div>
      <p className="trial-alone">
        {trial.isLess ? trialWords.noMore : trial.alone === null ? "" : trialWords.alone(trial.alone)}
      </p>
      <button type="button" className="patch patch-main" disabled={!trial.isReady} onClick={trial.learn}>
        {trialWords.learn}
      </button>
      <TrialAnswer role={role} />
    </div>
  );
}

/** What the two readings mean so far, and how to hand them in. */
function useTrial(role: BattingRole) {
  const { unit, batting, finishingBatting } = useFitting();
  const drafts = useDrafts();
  const doAndSay = useDoAndSay();
  const [before = "", after = ""] = moments.map((name) => drafts.other[trialDraftKeys[name]]);
  const [first, second] = [parseLength(before, unit), parseLength(after, unit)];
  const isRead = first.ok && second.ok;
  const gained: Millimetres | null = first.ok && second.ok ? mm(second.value - first.value) : null;
  const isLess = gained !== null && gained <= 0;
  const name = (role === "finishing" ? finishingBatting : batting)?.name ?? batting.name;
  return {
    isLess,
    isReady: isRead && !isLess,
    /** An even layer round any outline without hollows adds two pi times its thickness to the tape. */
    alone: gained === null || isLess ? null : thinText(mm(gained / (2 * Math.PI)), unit),
    learn: () => {
      if (!isRead || isLess) return;
      const at = new Date().toISOString();
      const readings = { before: before.trim(), after: after.trim() };
      doAndSay(
        { does: "tryLayer", trial: { did: "trial", batting: name, level: "waist", layers: 1, ...readings, at } },
        trialWords.learned,
      );
    },
  };
}

function TrialBatting({ role, onRole }: { readonly role: BattingRole; readonly onRole: (role: BattingRole) => void }) {
  const { batting, finishingBatting } = useFitting();
  if (finishingBatting === undefined || finishingBatting.name === batting.name) return null;
  return (
    <fieldset className="guesses">
      <legend>{trialWords.which}</legend>
      {(
        [
          ["building", batting.name],
          ["finishing", finishingBatting.name],
        ] as const
      ).map(([name, called]) => (
        <button key={name} type="button" className="patch" aria-pressed={role === name} onClick={() => onRole(name)}>
          {called}
        </button>
      ))}
    </fieldset>
  );
}
