import { err, ok, type Result } from "../../core/result";
import type { Fitting } from "../../document/fitting";
import { readFittingText } from "../../document/readFitting";
import type { FittingProblem } from "../../document/fittingProblem";
import { checkSum } from "../storage/checkSum";
import { fittingText } from "../storage/fittingText";
import { fromBase64url, toBase64url } from "./base64url";
import { linkStart, sharedFitting } from "./linkAddress";
import { namelessCopy } from "./namelessCopy";
import { canUnpack, packed, unpacked } from "./packedText";
import { type TooLong, tooLong } from "./tooLong";

/**
 * A fitting inside a link, after the `#`, where browsers do not send it to any server. Whoever has the link has a copy,
 * and so has every place it passes through: names and notes stay out unless they are wanted. `#fitting=` is followed by
 * the version, how the text is packed (z for deflate, p for plain), a check of the text, and the bytes in base64url.
 */
export interface LinkWishes {
  /** The title and the notes. */
  readonly names: boolean;
  /** What was pinned and read so far. */
  readonly work: boolean;
}

export type LinkOutcome = { readonly kind: "link"; readonly link: string } | TooLong;

export type LinkProblem =
  | { readonly code: "notALink" }
  | { readonly code: "tooLong"; readonly characters: number; readonly most: number }
  | { readonly code: "newerLink" }
  /** Cut short or changed on the way. */
  | { readonly code: "damaged" }
  /** This browser cannot unpack it; a file will do. */
  | { readonly code: "cannotUnpack" }
  | { readonly code: "badFitting"; readonly problems: readonly FittingProblem[] };

/** Longer links are cut by some messengers. */
export const longestLink = 8_000;
/** What the text in a link may at most unpack to, in bytes. */
const largestText = 400_000;

const linkVersion = "1";

/** The link to a copy of the fitting, at the address of this page without anything that was after its `#` or `?`. */
export async function shareLink(fitting: Fitting, wishes: LinkWishes, address: string): Promise<LinkOutcome> {
  const text = fittingText(shared(fitting, wishes));
  const bytes = new TextEncoder().encode(text);
  const small = await packed(bytes);
  const [packing, body] = small && small.length < bytes.length ? ["z", small] : ["p", bytes];
  const data = `${linkVersion}${packing}${checkSum(text)}${toBase64url(body as Uint8Array)}`;
  const link = address.replace(/[?#].*$/, "") + linkStart + data;
  return link.length > longestLink ? tooLong(link, longestLink) : { kind: "link", link };
}

/** What of a fitting goes into a link: never its id, drafts or moments. */
export function shared(fitting: Fitting, { names, work }: LinkWishes): Fitting {
  const { title, notes, stepNotes } = fitting;
  const written = { title, notes, ...(stepNotes === undefined ? {} : { stepNotes }) };
  const bare = namelessCopy(fitting, "");
  return { ...bare, ...(names ? written : {}), ...(work ? {} : { work: [] }) };
}

/** Reads what stands after the `#` of an address. Anybody may have written it. */
export async function readLink(hash: string): Promise<Result<Fitting, LinkProblem>> {
  const shareable = sharedFitting(hash);
  if (shareable === null) return err({ code: "notALink" });
  // A newer release may write links of another form and length, so its number is looked at before anything else.
  const version = /^#fitting=(\d+)/.exec(shareable)?.[1];
  if (Number(version) > Number(linkVersion)) return err({ code: "newerLink" });
  if (hash.length > longestLink) return err({ code: "tooLong", characters: hash.length, most: longestLink });
  const [, packing, check, data] = /^#fitting=\d+([a-z])([0-9a-f]{8})([A-Za-z0-9_-]*)/.exec(shareable) ?? [];
  if (data === undefined) return err({ code: "damaged" });
  const body = fromBase64url(data);
  if (version !== linkVersion || body === null || (packing !== "z" && packing !== "p")) return err({ code: "damaged" });
  if (packing === "z" && !canUnpack()) return err({ code: "cannotUnpack" });
  const bytes = packing === "z" ? await unpacked(body, largestText) : body;
  const text = bytes && decoded(bytes);
  if (text === null || checkSum(text) !== check) return err({ code: "damaged" });
  const read = readFittingText(text);
  if (read.ok) return ok(shared(read.value, { names: true, work: true }));
  const isNewer = read.problem.some(({ code }) => code === "newerVersion");
  return err(isNewer ? { code: "newerLink" } : { code: "badFitting", problems: read.problem });
}

function decoded(bytes: Uint8Array): string | null {
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return null;
  }
}
