import { type CautionPlace, cautionsAt, cautionTitle, shortCautions } from "../../text/cautions";

/** The cautions of one step, before it: their short forms always in sight, and at a tap what each of them means. */
export function Cautions({ at }: { readonly at: CautionPlace }) {
  return (
    <div role="note" className="cautions" aria-label={cautionTitle}>
      <details>
        <summary className="fold">{shortCautions(at)}</summary>
        <ul className="plain-list">
          {cautionsAt(at).map(({ short, long }) => (
            <li key={short}>
              <strong>{short}</strong> {long}
            </li>
          ))}
        </ul>
      </details>
    </div>
  );
}
