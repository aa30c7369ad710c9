/**
 * The text on one line with every character escaped that a terminal would obey instead of show, or that turns the
 * direction of the writing: a file may hold any of them. The escapes are those of JSON, so text that is JSON stays so.
 */
export const plainText = (text: string): string => text.replace(obeyed, escaped);

/** The same for JSON that is laid out on several lines. */
export const plainLines = (json: string): string => json.split("\n").map(plainText).join("\n");

const obeyed = /[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu;

const escaped = (sign: string): string => `\\u${(sign.codePointAt(0) ?? 0).toString(16).padStart(4, "0")}`;
