import type { Fitting } from "../../../document/fitting";
import type { Page } from "../page";

/** Where the work on a fitting is: at the form once a piece was pinned, else with the person. */
export const pageAtHand = ({ work }: Pick<Fitting, "work">): Page =>
  work.some(({ did }) => did === "pinned") ? "padding" : "body";
