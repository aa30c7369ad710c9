/** What can still be asked, in words: what it is and what it brings, a benefit and no reproach. */
export const questionsWords = {
  title: "What brings the plan closer, the most first",
  names: {
    bodyFronts: "The person’s front at every line, side seam to side seam",
    bodyGirths: "The person’s underbust and high hip, all around",
    bodyHeights: "The person’s heights above the floor",
    bodyLengths: "The person’s back waist length, shoulder to apex and the lengths down the side",
    bodyApexes: "The person’s apex to apex",
    bodyBreadths: "The person’s widths straight across",
    formGirths: "The form’s own measurements, all around and in front",
    formHeights: "The form’s heights above the floor",
    formLines: "The person’s lines marked on the form, and the bare form measured there",
    formBreadths: "The bare form’s width straight across on every line",
    formDepths: "The bare form’s depth front to back on every line",
  },
  closer: (length: string): string => `about ${length} closer`,
  /** Beside a heading: what nine in ten measurements gain by it. */
  brings: (length: string): string => `Brings nine in ten measurements of the padded form about ${length} closer.`,
} as const;
