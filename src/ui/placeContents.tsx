import { type ComponentType, lazy } from "react";
import type { Place } from "./place";
import { Door } from "./steps/Door";

/**
 * What lies in each place. Only the door is loaded at once; the others follow as soon as the browser is idle, so that
 * the first screen is quick and no later one has to wait.
 */
const loaders = {
  body: () => import("./steps/BodyPlace").then(({ BodyPlace }) => ({ default: BodyPlace })),
  form: () => import("./steps/FormPlace").then(({ FormPlace }) => ({ default: FormPlace })),
  plan: () => import("./steps/PlanPlace").then(({ PlanPlace }) => ({ default: PlanPlace })),
  padding: () => import("./steps/PaddingPlace").then(({ PaddingPlace }) => ({ default: PaddingPlace })),
  finishing: () => import("./steps/FinishingPlace").then(({ FinishingPlace }) => ({ default: FinishingPlace })),
  print: () => import("./print/PrintPlace").then(({ PrintPlace }) => ({ default: PrintPlace })),
  wall: () => import("./wall/WallPlace").then(({ WallPlace }) => ({ default: WallPlace })),
  turning: () => import("./turning/TurningPlace").then(({ TurningPlace }) => ({ default: TurningPlace })),
  fittings: () => import("./library/FittingsPlace").then(({ FittingsPlace }) => ({ default: FittingsPlace })),
} as const satisfies { readonly [place in Exclude<Place, "door">]: () => Promise<{ readonly default: ComponentType }> };

export const placeContents: { readonly [place in Place]: ComponentType } = {
  door: Door,
  body: lazy(loaders.body),
  form: lazy(loaders.form),
  plan: lazy(loaders.plan),
  padding: lazy(loaders.padding),
  finishing: lazy(loaders.finishing),
  print: lazy(loaders.print),
  wall: lazy(loaders.wall),
  turning: lazy(loaders.turning),
  fittings: lazy(loaders.fittings),
};

/** Fetches the places of the work ahead of need; the wall and the turning figure wait until someone asks for them. */
export const fetchPlaces = (): void => {
  const { wall: _wall, turning: _turning, ...work } = loaders;
  for (const load of Object.values(work)) void load().catch(() => {});
};
