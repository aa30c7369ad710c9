import type { ComponentType } from "react";
import type { Place } from "../kit/place";
import { latePart } from "../kit/rescue/latePart";
import { MissingPage } from "./MissingPart";
import { Door } from "../pages/home/Door";

const latePage = (load: () => Promise<ComponentType>) => latePart(load, MissingPage);

/**
 * What lies in each place. Only the door is loaded at once; the others follow as soon as the browser is idle, so that
 * the first screen is quick and no later one has to wait.
 */
const latePages = {
  body: latePage(() => import("../pages/body/BodyPlace").then(({ BodyPlace }) => BodyPlace)),
  form: latePage(() => import("../pages/form/FormPlace").then(({ FormPlace }) => FormPlace)),
  plan: latePage(() => import("../pages/plan/PlanPlace").then(({ PlanPlace }) => PlanPlace)),
  padding: latePage(() => import("../pages/padding/PaddingPage").then(({ PaddingPage }) => PaddingPage)),
  finishing: latePage(() => import("../pages/finishing/FinishingPlace").then(({ FinishingPlace }) => FinishingPlace)),
  print: latePage(() => import("../pages/print/PrintPlace").then(({ PrintPlace }) => PrintPlace)),
  wall: latePage(() => import("../pages/class/WallPlace").then(({ WallPlace }) => WallPlace)),
  turning: latePage(() => import("../pages/view3d/TurningPlace").then(({ TurningPlace }) => TurningPlace)),
  fittings: latePage(() => import("../pages/fittings/FittingsPlace").then(({ FittingsPlace }) => FittingsPlace)),
} as const satisfies { readonly [place in Exclude<Place, "door">]: ComponentType };

export const placeContents: { readonly [place in Place]: ComponentType } = { door: Door, ...latePages };

/** Fetches the places of the work ahead of need; the wall and the turning figure wait until someone asks for them. */
export const fetchPlaces = (): void => {
  const { wall: _wall, turning: _turning, ...work } = latePages;
  for (const page of Object.values(work)) page.fetch();
};
