import type { Fitting } from "../../document/fitting";
import type { NotSaved } from "../storage/fittingOutcome";
import type { FittingStorage } from "../storage/fittingStorage";
import { type Imported, importFittings } from "./fileImport";
import { type LinkProblem, readLink } from "./shareLink";

/** What came of links that somebody pasted: every fitting that could be read was taken up, or none for want of room. */
export interface LinksOutcome {
  /** Null where none of them holds a fitting. */
  readonly taken: Imported | NotSaved | null;
  readonly refused: readonly RefusedLink[];
}

export interface RefusedLink {
  /** Which link of the text, counted from 1. */
  readonly number: number;
  readonly link: string;
  readonly code: LinkProblem["code"];
}

/** Every link to a fitting in a text, in its order, from its `#` on, whatever stands between them. Anybody may have written it. */
export const linksIn = (text: string): readonly string[] =>
  text.match(/#fitting(?:=|%3d)[A-Za-z0-9_-]*/gi)?.slice(0, mostLinks) ?? [];

/** More than any class has. */
export const mostLinks = 200;

export async function importLinks(links: readonly string[], storage: FittingStorage): Promise<LinksOutcome> {
  const fittings: Fitting[] = [];
  const refused: RefusedLink[] = [];
  for (const [i, link] of links.entries()) {
    const read = await readLink(link);
    if (read.ok) fittings.push(read.value);
    else refused.push({ number: i + 1, link, code: read.problem.code });
  }
  return { taken: fittings.length === 0 ? null : await importFittings(fittings, storage), refused };
}
