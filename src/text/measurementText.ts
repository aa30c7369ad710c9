/**
 * What each measurement is and how to take it, in our own words. Left and right are the wearer's. The tape is snug when
 * it stays up by itself and a finger still slides under it.
 */
export interface MeasurementText {
  readonly label: string;
  /** What it is. */
  readonly what: string;
  /** How to take it of a body, with someone to help: two sentences. */
  readonly onBody: string;
  /** The same alone, in front of a mirror: one sentence more. */
  readonly alone: string;
  /** How to take it of a form: two sentences. */
  readonly onForm: string;
  /** Where to find the place. */
  readonly landmark: string;
  /** What most often goes wrong. */
  readonly mistake: string;
}
