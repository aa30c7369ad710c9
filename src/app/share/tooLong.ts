/** A text that would not go where it has to, with how long it is and may be. */
export interface TooLong {
  readonly kind: "tooLong";
  readonly characters: number;
  readonly most: number;
}

export const tooLong = (text: string, most: number): TooLong => ({ kind: "tooLong", characters: text.length, most });
