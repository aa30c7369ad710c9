/** Words of the teacher's notes to the steps. */
export const stepNoteWords = {
  title: "Notes for the steps",
  lead: "For a class: what you want to say at a step. When you press N in the class view, everyone who sees the screen can read it; the session plan prints it, unless it is printed without the name. Write nothing here about a person or a body. Notes are kept with this fitting, in its file as well; a link or a class file without names leaves them out.",
  count: (notes: number): string => (notes === 0 ? "none yet" : notes === 1 ? "1 note" : `${notes} notes`),
  noteTo: (act: string): string => `Note: ${act}`,
  /** A step that the plan had when the note was written. */
  gone: "Notes for steps that this plan no longer has",
  goneNote: (number: number): string => `Note ${number}, for a step that is gone`,
  onPaper: (act: string, note: string): string => `${act}: ${note}`,
  here: "Note",
  mark: "a note",
  none: "No note for this step.",
  madeUpNone: "No note for this step here: notes belong to the fitting that is open.",
  toTyping: "Type notes, under Print",
  covered: "There is a number in this note, so it is hidden while the figures are covered.",
} as const;
