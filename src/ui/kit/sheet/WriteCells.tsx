/** Room to write a figure after each word; what is known already stands in it. */
export const WriteCells = ({
  cells,
}: {
  readonly cells: readonly (readonly [word: string, figure?: string | undefined])[];
}) => (
  <p className="sheet-pins">
    {cells.map(([word, figure], i) => (
      <span key={`${word}${String(i)}`}>
        {word} <span className="sheet-write">{figure}</span>
      </span>
    ))}
  </p>
);
