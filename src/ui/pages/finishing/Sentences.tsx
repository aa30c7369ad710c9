/** Sentences under one another, numbered where their order matters. */
export interface SentencesProps {
  readonly sentences: readonly string[];
  readonly ordered?: boolean;
}

export function Sentences({ sentences, ordered = false }: SentencesProps) {
  const items = sentences.map((sentence) => <li key={sentence}>{sentence}</li>);
  return ordered ? <ol className="plain-list numbered">{items}</ol> : <ul className="plain-list">{items}</ul>;
}
