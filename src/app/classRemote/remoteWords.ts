/**
 * What passes between a phone that is a remote and the class view, over the server that shares the tool in one network: step moves one way, the
 * act of the step the other, and nothing else.
 */
export const remoteMoves = ["back", "forward", "cover"] as const;
export type RemoteMove = (typeof remoteMoves)[number];

export const isRemoteMove = (said: unknown): said is RemoteMove => remoteMoves.some((move) => move === said);

/** An act is one sentence (letters). */
export const longestAct = 240;

/** A code is typed once, from a screen across the room. */
export const codeDigits = 6;

/** What the server tells the class view. */
export type RoomNews =
  | { readonly kind: "waiting"; readonly code: string }
  | { readonly kind: "paired" }
  | { readonly kind: "move"; readonly move: RemoteMove };

/** What the server tells the phone. */
export type PhoneNews = { readonly kind: "act"; readonly act: string } | { readonly kind: "over" };

export function readRoomNews(text: string): RoomNews | null {
  const { kind, code, move } = fieldsOf(text);
  if (kind === "waiting" && typeof code === "string") return { kind, code };
  if (kind === "paired") return { kind };
  return kind === "move" && isRemoteMove(move) ? { kind, move } : null;
}

export function readPhoneNews(text: string): PhoneNews | null {
  const { kind, act } = fieldsOf(text);
  if (kind === "act" && typeof act === "string") return { kind, act };
  return kind === "over" ? { kind } : null;
}

/** The fields of a JSON object; of anything else none. */
export function fieldsOf(text: string): { readonly [name: string]: unknown } {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}
