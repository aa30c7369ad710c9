import type { ClassSupplies } from "../../../app/supplies/classSupplies";
import { battingToHave, classSuppliesLines, classSuppliesWords, leftWords } from "../../../text/supplies";
import { LayoutPicture } from "../../kit/supplies/LayoutPicture";
import { useLengths } from "../../kit/useStore";

interface FoundProps {
  readonly supplies: ClassSupplies;
  /** Whose pieces have which letter: the letter, then the name. */
  readonly names: readonly string[];
}

/** What several fittings take together: everything of one batting laid together, then what is counted. */
export function ClassSuppliesFound({ supplies, names }: FoundProps) {
  const { unit, step } = useLengths();
  return (
    <div className="stack">
      {supplies.battings.map(({ name, layout }) => (
        <div key={`${name} ${layout.good.id}`} className="stack">
          <p>
            <strong>{battingToHave(name, layout, unit)}</strong> {leftWords(layout, step)}
          </p>
          {layout.tooLarge.length === 0 ? null : (
            <p className="caution">{classSuppliesWords.tooLarge(layout.tooLarge.map(({ label }) => label))}</p>
          )}
          <LayoutPicture layout={layout} name={name} />
        </div>
      ))}
      {names.length === 0 ? null : (
        <>
          <p className="quiet">{classSuppliesWords.letters(names)}</p>
          <ul className="plain-list">
            {classSuppliesLines(supplies, unit).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
