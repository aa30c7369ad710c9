import type { ChartKind, ChartSource } from "../core/form/formTable";

/** Words of the place where the form is described. */
export const formingWords = {
  title: "The form",
  lead: "Padding only adds, so the form has to be smaller than the person everywhere.",
  tableTitle: "The size it is sold as",
  tableLead:
    "A size number says little about a form: makers and charts differ. It will do for a first plan and for choosing what to buy. The form’s own measurements, taken at the level lines, always win.",
  table: "Size chart",
  noTable: "No size chart: the form is measured",
  size: "Size",
  toolChooses: (size: string): string => `Worked out from the measurements: ${size}`,
  best: "worked out",
  why: (name: string, gain: string, layers: number): string =>
    `Size ${name} is the largest that is not larger than the person anywhere. Padding at the waist: ${gain} around, ${layerCount(layers)}.`,
  noneFits: (name: string, over: string): string =>
    `Every size of this chart is larger than the person somewhere. Size ${name} comes nearest: ${over} larger in all.`,
  nothingOver: "not larger anywhere",
  over: (length: string): string => `${length} larger, all level lines together`,
  toAdd: (length: string): string => `${length} to add around, all level lines together`,
  waistLayers: (layers: number): string => `${layerCount(layers)} at the waist`,
  noLayers: "no layers at the waist",
  measuredWins:
    "The form’s own measurements are in, so the chart only fills in the rest. A size number says little; what you measured at the level lines always wins.",
  needsBody: "Once the person’s bust, waist and full hip are in, the sizes are compared here.",
  kinds: {
    standard: "Published standards",
    survey: "Surveys",
    privatePage: "Pages of private sites",
  } satisfies { readonly [kind in ChartKind]: string },
  source: ({ kind, title, year }: ChartSource): string => `${sourceKinds[kind]}: ${title}, ${year}.`,
  lacks: "no hip in it: measure the form’s full hip",
  reachesFurther: (title: string): string => `The chart “${title}” covers this person better.`,
  take: (title: string): string => `Use “${title}”`,
  sizeHead: { size: "Size", bust: "bust", waist: "waist", fullHip: "full hip", verdict: "For this person" },
  allSizes: "All sizes",
} as const;

const sourceKinds: { readonly [kind in ChartKind]: string } = {
  standard: "These are a published standard’s figures",
  survey: "These are a survey’s figures",
  privatePage: "These figures are from a page of a private site, not a standard",
};

const layerCount = (layers: number): string =>
  layers === 0 ? "less than one layer" : layers === 1 ? "about one layer" : `about ${layers} layers`;
