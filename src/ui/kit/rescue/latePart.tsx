import { type ComponentType, useEffect } from "react";
import { useStore } from "zustand";
import { createStore } from "zustand/vanilla";

/**
 * A part of the screens that is loaded when it is first shown, or ahead of need. Until it is there it takes no room. Where
 * it does not arrive, `Missing` stands in its place, and it can be asked for again: a part is only asked for once at a
 * time, and comes into its place wherever it is shown.
 */
type LatePart<Props extends object> = ComponentType<Props> & {
  /** Asks for it ahead of need. Where it does not arrive, nothing is said until it is shown. */
  readonly fetch: () => void;
};

type Arrival<Props> =
  | { readonly kind: "waiting" }
  | { readonly kind: "missing" }
  | { readonly kind: "here"; readonly Part: ComponentType<Props> };

export function latePart<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  Missing: ComponentType = Nothing,
): LatePart<Props> {
  const arrival = createStore<Arrival<Props>>(() => ({ kind: "waiting" }));
  let underway: Promise<boolean> | null = null;
  const ask = (): Promise<boolean> => {
    underway ??= load()
      .then(
        (Part) => {
          arrival.setState({ kind: "here", Part });
          return true;
        },
        () => {
          arrival.setState({ kind: "missing" });
          return false;
        },
      )
      .finally(() => {
        underway = null;
      });
    return underway;
  };
  const wanted: WantedPart = {
    saysItself: Missing !== Nothing,
    ask: async () => {
      const isHere = await ask();
      const others = lateParts.getState().missing.filter((one) => one !== wanted);
      lateParts.setState({ missing: isHere ? others : [...others, wanted] });
    },
  };
  function Late(props: Props) {
    const found = useStore(arrival);
    useEffect(() => {
      if (arrival.getState().kind !== "here") void wanted.ask();
    }, []);
    if (found.kind === "here") return <found.Part {...props} />;
    return found.kind === "missing" ? <Missing /> : null;
  }
  return Object.assign(Late, { fetch: () => (arrival.getState().kind === "here" ? undefined : void ask()) });
}

const Nothing = () => null;

interface WantedPart {
  /** Whether something stands in its place that says so and offers to ask again. */
  readonly saysItself: boolean;
  readonly ask: () => Promise<void>;
}

/** The parts that were wanted and did not arrive. */
export const lateParts = createStore<{ readonly missing: readonly WantedPart[] }>(() => ({ missing: [] }));

/** Asks once more for everything that is missing; whether all of it arrived. */
export async function askForMissing(): Promise<boolean> {
  await Promise.all(lateParts.getState().missing.map((part) => part.ask()));
  return lateParts.getState().missing.length === 0;
}
