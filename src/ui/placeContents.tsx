import type { ComponentType } from "react";
import type { Place } from "./place";
import { latePart } from "./rescue/latePart";
import { MissingPage } from "./rescue/MissingPart";
import { Door } from "./steps/Door";

const latePage = (load: () => Promise<ComponentType>) => latePart(load, MissingPage);

/**
 * What lies in each place. Only the door is loaded at once; the others follow as soon as the browser is idle, so that
 * the first screen is quick and no later one has to wait.
 */
const latePages = {
  body: latePage(() => import("./steps/BodyPlace").then(({ BodyPlace }) => BodyPlace)),
  form: latePage(() => import("./steps/FormPlace").then(({ FormPlace }) => FormPlace)),
  plan: latePage(() => import("./steps/PlanPlace").then(({ PlanPlace }) => PlanPlace)),
  padding: latePage(() => import("./pages/padding/PaddingPage").then(({ PaddingPage }) => PaddingPage)),
  finishing: latePage(() => import("./steps/FinishingPlace").then(({ FinishingPlace }) => FinishingPlace)),
  print: latePage(() => import("./print/PrintPlace").then(({ PrintPlace }) => PrintPlace)),
  wall: latePage(() => import("./wall/WallPlace").then(({ WallPlace }) => WallPlace)),
  turning: latePage(() => import("./turning/TurningPlace").then(({ TurningPlace }) => TurningPlace)),
  fittings: latePage(() => import("./library/FittingsPlace").then(({ FittingsPlace }) => FittingsPlace)),
} as const satisfies { readonly [place in Exclude<Place, "door">]: ComponentType };

export const placeContents: { readonly [place in Place]: ComponentType } = { door: Door, ...latePages };

/** Fetches the places of the work ahead of need; the wall and the turning figure wait until someone asks for them. */
export const fetchPlaces = (): void => {
  const { wall: _wall, turning: _turning, ...work } = latePages;
  for (const page of Object.values(work)) page.fetch();
};
