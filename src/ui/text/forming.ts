/** Words of the place where the form is described. */
export const formingWords = {
  title: "The form",
  lead: "Padding adds and takes nothing away, so the form has to be smaller than the body everywhere.",
  tableTitle: "The size it is sold as",
  tableLead:
    "A table is a guess about a form nobody measured. It will do for a first plan and for choosing what to buy.",
  table: "Size table",
  noTable: "No table: the form is measured",
  size: "Size",
  toolChooses: (size: string): string => `Whichever suits best: ${size}`,
  best: "suits best",
  why: (name: string, gain: string, layers: number): string =>
    `Size ${name} is the largest that is nowhere too large. The waist has ${gain} to gain, ${layerCount(layers)}.`,
  noneFits: (name: string, over: string): string =>
    `Every size of this table is too large somewhere. Size ${name} comes nearest: ${over} too large in all.`,
  nothingOver: "nowhere too large",
  over: (length: string): string => `${length} too large, all levels together`,
  toAdd: (length: string): string => `${length} of girth to add, all levels together`,
  waistLayers: (layers: number): string => `${layerCount(layers)} at the waist`,
  noLayers: "no layers at the waist",
  measuredWins: "The form’s own girths are measured, so the table only fills in the rest.",
  needsBody: "Once the body’s three girths are in, the sizes are compared here.",
  source: (source: string): string => `Table from: ${source}.`,
  sizeHead: { size: "Size", bust: "bust", waist: "waist", fullHip: "full hip", verdict: "For this body" },
  allSizes: "All sizes",
} as const;

const layerCount = (layers: number): string =>
  layers === 0 ? "less than one layer" : layers === 1 ? "about one layer" : `about ${layers} layers`;
