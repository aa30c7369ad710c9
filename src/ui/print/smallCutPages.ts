/** The small drawings lie three abreast and five deep on Letter, the shorter of the two papers. */
export const smallCutPages = <Card>(cards: readonly Card[]): readonly (readonly Card[])[] =>
  Array.from({ length: Math.max(1, Math.ceil(cards.length / perPage)) }, (_, i) =>
    cards.slice(i * perPage, (i + 1) * perPage),
  );

const perPage = 15;
