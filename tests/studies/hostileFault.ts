/** What went wrong in a round of a hostile study, which its seed brings back. */
export interface HostileFault<What extends string> {
  readonly seed: number;
  readonly what: What;
  readonly detail: string;
}
