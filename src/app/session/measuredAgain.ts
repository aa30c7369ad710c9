import type { Fitting } from "../../document/fitting";

/**
 * The same person on the same form, to be measured anew: what is pinned stays on the form and is remembered, and of the person nothing is,
 * so that no old measurement stands beside a new one.
 */
export function measuredAgain({ id: _id, ...fitting }: Fitting, title: string): Omit<Fitting, "id"> {
  return { ...fitting, title, body: {}, drafts: { ...fitting.drafts, body: {} } };
}
