interface HeadCellsProps {
  readonly words: readonly string[];
  /** How many rows of the head they go down over. */
  readonly rows?: number;
}

/** Heads of columns, one beside the other. */
export const HeadCells = ({ words, rows }: HeadCellsProps) =>
  words.map((text, i) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: columns stay where they are, and two may be headed alike.
    <th key={i} scope="col" rowSpan={rows}>
      {text}
    </th>
  ));
