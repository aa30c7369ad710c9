import type { Fitting } from "../../document/fitting";

/**
 * A copy of a fitting that says nothing of whose it is: another title in place of the name, and no notes of either kind, half-typed texts, id,
 * moments, or keys that this tool does not know. Figures and work are all there.
 */
export function namelessCopy(fitting: Fitting, title: string): Fitting {
  const { id: _id, createdAt: _createdAt, changedAt: _changedAt, stepNotes: _stepNotes, ...rest } = fitting;
  return {
    ...rest,
    title,
    notes: "",
    drafts: { body: {}, form: {}, other: {} },
    work: fitting.work.map(({ at: _at, ...entry }) => entry),
    extra: {},
  };
}
