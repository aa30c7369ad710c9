import { paddingWords } from "../text/padding";

/** The cautions of pinning and cutting: open above the first piece, and at one press after it. */
export function Cautions({ isOpen }: { readonly isOpen: boolean }) {
  const list = (
    <ul className="plain-list cautions">
      {paddingWords.care.map(({ short, long }) => (
        <li key={short}>
          <strong>{short}</strong> <span className="caution-long">{long}</span>
        </li>
      ))}
    </ul>
  );
  if (isOpen) {
    return (
      <section className="caution" aria-label={paddingWords.careTitle}>
        {list}
      </section>
    );
  }
  return (
    <details className="caution">
      <summary className="fold">{paddingWords.careTitle}</summary>
      {list}
      <p>{paddingWords.careRules}</p>
    </details>
  );
}
