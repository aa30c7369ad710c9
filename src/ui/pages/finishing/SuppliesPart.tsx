import { chosenCloth } from "../../../app/steps/chosenCloth";
import { costOf } from "../../../app/supplies/cost";
import { piecesDone } from "../../../app/supplies/fittingSupplies";
import { armReading } from "../../../core/arm/armReadings";
import type { Plan } from "../../../core/plan/plan";
import { boughtLength } from "../../../core/supplies/goods";
import { battingNames } from "../../../text/batting";
import { coverChoice } from "../../../text/makingSteps";
import { finishingWords } from "../../../text/finishing";
import { notionLines, priceText, suppliesWords } from "../../../text/supplies";
import { useBattingSupplies } from "../../kit/supplies/useBattingSupplies";
import { type CoverAndNotions, useCoverSupply } from "../../kit/supplies/useCoverSupply";
import { suppliesThing, usePlaceAsked } from "../../kit/page";
import { useDerived } from "../../kit/useDerived";
import { useDispatch, useFitting, useLengths } from "../../kit/useStore";
import { ArmChoice } from "./ArmChoice";
import { BattingSupplyPart } from "./BattingSupplyPart";
import { CoverClothPart } from "./CoverClothPart";
import { PriceField } from "./PriceField";

/** What is bought for a fitting: each batting with its layout, the cloth of the cover, notions, and what it costs if prices are typed. */
interface SuppliesProps {
  readonly plan: Plan;
  /** Where there is no cover, what leads to choosing one; null while nothing goes over the padding yet. */
  readonly onCover: (() => void) | null;
}

export function SuppliesPart({ plan, onCover }: SuppliesProps) {
  const { unit, step } = useLengths();
  const fitting = useFitting();
  const battings = useBattingSupplies(plan);
  const made = useCoverSupply(battings);
  const names = battingNames(fitting);
  const done = piecesDone(fitting);
  const { lengths } = useDerived();
  const doneCount = plan.pieces.filter(({ id }) => done.has(id)).length;
  return (
    <section className="stitched stack" id="supplies" ref={usePlaceAsked(suppliesThing)}>
      <h2>{suppliesWords.title}</h2>
      {battings.length === 0 && plan.pieces.length > 0 ? <p>{suppliesWords.allCut}</p> : null}
      {battings.length > 0 && doneCount > 0 ? <p>{suppliesWords.someCut(doneCount)}</p> : null}
      {battings.map((supply) => (
        <BattingSupplyPart key={supply.role} supply={supply} name={names[supply.role]} />
      ))}
      {battings.length === 0 ? null : (
        <p className="quiet">
          {suppliesWords.laidOut(step)} {suppliesWords.numbers}{" "}
          {fitting.work.some(({ did }) => did === "trial") ? "" : suppliesWords.trial} {suppliesWords.sizesFromMemory}
        </p>
      )}
      {chosenCloth(fitting).kind === "none" ? <NoCover onCover={onCover} /> : null}
      {chosenCloth(fitting).kind === "none" && made?.cover.ids.length === 0 ? null : (
        <CoverClothPart cover={made?.cover ?? null} />
      )}
      {armReading(lengths?.body ?? {}).kind === "whole" ? <ArmChoice group="supplies" /> : null}
      <h3>{suppliesWords.notions}</h3>
      <ul className="plain-list">
        <li>{finishingWords.supplyBra}</li>
        {made === null ? null : notionLines(made.notions, unit).map((line) => <li key={line}>{line}</li>)}
      </ul>
      <CostPart battings={battings} made={made} />
    </section>
  );
}

function NoCover({ onCover }: Pick<SuppliesProps, "onCover">) {
  return (
    <>
      <h3>{coverChoice.legend}</h3>
      <p>
        {finishingWords.noCover}{" "}
        {onCover === null ? null : (
          <button type="button" className="patch" onClick={onCover}>
            {finishingWords.coverAfterAll}
          </button>
        )}
      </p>
    </>
  );
}

interface CostProps {
  readonly battings: ReturnType<typeof useBattingSupplies>;
  readonly made: CoverAndNotions | null;
}

function CostPart({ battings, made }: CostProps) {
  const { unit } = useLengths();
  const { supplies } = useFitting();
  const dispatch = useDispatch();
  const clothLength = made === null || made.cover.ids.length === 0 ? null : boughtLength(made.cover.rows.length, unit);
  const cost = costOf(supplies, battings, clothLength);
  const change = (amount: number | undefined) => {
    const { notions: _, ...others } = supplies ?? {};
    dispatch({ does: "changeSupplies", supplies: amount === undefined ? others : { ...others, notions: amount } });
  };
  return (
    <>
      <h3>{suppliesWords.cost}</h3>
      <p>{suppliesWords.costLead}</p>
      <PriceField label={suppliesWords.notionsPrice} draft="notions" amount={supplies?.notions} onAmount={change} />
      {cost === null ? null : (
        <p role="status">
          <strong>
            {cost.isWhole ? suppliesWords.costSum(priceText(cost.sum)) : suppliesWords.costPart(priceText(cost.sum))}
          </strong>
        </p>
      )}
    </>
  );
}
