import { type TooLong, tooLong } from "./tooLong";

/**
 * A QR code (ISO/IEC 18004) as the outline of its dark squares, one unit each, for an SVG path. The encoder is loaded
 * only when somebody asks for a code.
 */
export interface QrPicture {
  /** Units from side to side, the quiet margin of four units included. */
  readonly size: number;
  readonly path: string;
}

export type QrOutcome = { readonly kind: "code"; readonly picture: QrPicture } | TooLong;

/** Beyond this a camera at the back of a room can no longer tell the squares apart on a projector. */
export const longestCode = 1_800;

const margin = 4;

export async function qrCode(text: string): Promise<QrOutcome> {
  if (text.length > longestCode) return tooLong(text, longestCode);
  const { encode } = await import("uqr");
  const { data } = encode(text, { ecc: "L", border: 0, boostEcc: true });
  return { kind: "code", picture: { size: data.length + 2 * margin, path: darkRuns(data) } };
}

/** Each run of dark squares in a row as one rectangle. */
function darkRuns(rows: readonly (readonly boolean[])[]): string {
  const runs: string[] = [];
  for (const [y, row] of rows.entries()) {
    for (let x = 0; x < row.length; x += 1) {
      const start = x;
      while (row[x]) x += 1;
      if (x > start) runs.push(`M${start + margin} ${y + margin}h${x - start}v1h${start - x}z`);
    }
  }
  return runs.join("");
}
