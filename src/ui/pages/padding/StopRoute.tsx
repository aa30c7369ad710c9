import type { RouteStop } from "../../../app/steps/route";
import { pieceName } from "../../../text/plan";
import { stopWords } from "../../../text/stops";

/** A stop before the first piece: the form made ready, the lines, the trial. */
export interface Preparation {
  readonly name: keyof typeof stopWords.prepared;
  readonly standing: "done" | "now" | "toCome";
}

interface StopRouteProps {
  readonly preparations: readonly Preparation[];
  readonly stops: readonly RouteStop[];
  /** The piece that is looked at; null where the next step is shown. */
  readonly looked: string | null;
  readonly onLook: (pieceId: string | null) => void;
}

/** The way of the whole job: small squares before the first piece, one circle a piece; done is filled, now is yellow with its number. */
export function StopRoute({ preparations, stops, looked, onLook }: StopRouteProps) {
  return (
    <div className="route">
      <ol className="route-before" aria-label={stopWords.preparations}>
        {preparations.map(({ name, standing }) => (
          <li
            key={name}
            className={`route-square route-${standing}`}
            aria-current={standing === "now" ? "step" : undefined}
          >
            <span className="unseen">
              {stopWords.prepared[name]}: {standing === "done" ? stopWords.isDone : stopWords.stands[standing]}
            </span>
          </li>
        ))}
      </ol>
      <ol className="route-pieces" aria-label={stopWords.route}>
        {stops.map(({ piece, standing }, i) => (
          <li key={piece.id} className={`route-${standing}`}>
            <button
              type="button"
              aria-current={standing === "now" ? "step" : undefined}
              aria-pressed={looked === piece.id}
              aria-label={`${i + 1}. ${pieceName(piece)}: ${stopWords.stands[standing]}`}
              onClick={() => onLook(looked === piece.id || (standing === "now" && looked === null) ? null : piece.id)}
            >
              <span className="route-stop" aria-hidden>
                {standing === "now" || looked === piece.id ? i + 1 : ""}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </div>
  );
}
