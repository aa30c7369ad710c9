/** Words of the teacher's notes to the steps. */
export const stepNoteWords = {
  title: "Notes to the steps",
  lead: "For a class: what you want to say at a step. The class view shows it at that step when you press N, and the session plan prints it. Notes are kept with this fitting, in its file as well; a link or a class file without names leaves them out.",
  count: (notes: number): string => (notes === 0 ? "none yet" : notes === 1 ? "1 note" : `${notes} notes`),
  noteTo: (act: string): string => `Note: ${act}`,
  /** A step that the plan had when the note was written. */
  gone: "Notes to steps that this plan no longer has",
  goneNote: (number: number): string => `Note ${number} to a step that is gone`,
  onPaper: (act: string, note: string): string => `${act}: ${note}`,
  here: "Note",
  mark: "a note",
  none: "No note to this step. Notes are typed under Print, with the session plan.",
  madeUpNone: "A sample person has no notes of yours: they are kept with your own fitting.",
  covered: "What names a figure is left out while the figures are covered.",
} as const;
