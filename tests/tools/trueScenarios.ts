import {
  breadths,
  depths,
  type Entries,
  type Given,
  girthsAndFronts,
  heights,
  lowerBreast,
  markedDepths,
  readingsAt,
  readingsOnLines,
  surfaceLengths,
  type TruePair,
} from "./trueTrials";

/** What a person may have measured of body and form, from little to much. */
export interface Scenario {
  readonly id: ScenarioId;
  readonly title: string;
  readonly given: (pair: TruePair) => Given;
}

export const scenarioIds = [
  "fewest",
  "byTape",
  "ownLevels",
  "lines",
  "linesAndBreadths",
  "linesBreadthsDepths",
  "linesBodyByTape",
  "linesAndLowerBreast",
] as const;
export type ScenarioId = (typeof scenarioIds)[number];

/** The bare form read on the person's lines. */
export const onLines = (
  { body, form }: TruePair,
  more: (levels: ReturnType<typeof readingsAt>) => Entries = () => ({}),
): Entries => {
  const levels = readingsAt(form, body.levels);
  return { readAtBodyLines: true, ...girthsAndFronts(levels), ...more(levels) };
};

export const bodyWithHeights = ({ body }: TruePair): Entries => ({
  ...girthsAndFronts(body.levels),
  ...heights(body.levels),
  apexToApex: body.lengths.apexToApex,
});

const given: { readonly [id in ScenarioId]: (pair: TruePair) => Given } = {
  fewest: ({ body, form }) => ({
    body: {
      bustGirth: body.levels.bust.girth,
      waistGirth: body.levels.waist.girth,
      fullHipGirth: body.levels.fullHip.girth,
      waistFrontArc: body.levels.waist.front,
    },
    form: {
      bustGirth: form.levels.bust.girth,
      waistGirth: form.levels.waist.girth,
      fullHipGirth: form.levels.fullHip.girth,
    },
  }),
  byTape: ({ body, form }) => ({
    body: { ...girthsAndFronts(body.levels), ...surfaceLengths(body) },
    form: { ...girthsAndFronts(form.levels), ...surfaceLengths(form) },
  }),
  ownLevels: (pair) => ({
    body: bodyWithHeights(pair),
    form: {
      ...girthsAndFronts(pair.form.levels),
      ...heights(pair.form.levels, 900),
      apexToApex: pair.form.lengths.apexToApex,
    },
  }),
  lines: (pair) => ({ body: bodyWithHeights(pair), form: onLines(pair) }),
  linesAndBreadths: (pair) => ({ body: bodyWithHeights(pair), form: onLines(pair, breadths) }),
  linesBreadthsDepths: (pair) => ({
    body: bodyWithHeights(pair),
    form: onLines(pair, (levels) => ({ ...breadths(levels), ...depths(levels) })),
  }),
  linesBodyByTape: ({ body: person, form }) => {
    const body = { ...girthsAndFronts(person.levels), ...surfaceLengths(person) };
    const readings = readingsOnLines(form, markedDepths(body));
    return { body, form: { readAtBodyLines: true, ...girthsAndFronts(readings) } };
  },
  linesAndLowerBreast: (pair) => ({
    body: { ...bodyWithHeights(pair), ...lowerBreast(pair.body, pair.body.levels) },
    form: { ...onLines(pair, breadths), ...lowerBreast(pair.form, pair.body.levels) },
  }),
};

const titles: { readonly [id in ScenarioId]: string } = {
  fewest: "bust, waist, hip, front waist; the form's three girths",
  byTape: "all by tape over the surface; the form at its own levels",
  ownLevels: "heights true; the form at its own levels",
  lines: "heights true; the bare form read on the person's lines",
  linesAndBreadths: "… and the form's breadths there",
  linesBreadthsDepths: "… and its depths",
  linesBodyByTape: "the form read on lines that were marked by surface lengths",
  linesAndLowerBreast: "heights, lines, breadths, and the lower breast of both",
};

export const scenarios: readonly Scenario[] = scenarioIds.map((id) => ({ id, title: titles[id], given: given[id] }));
