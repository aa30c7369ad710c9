/**
 * The check kept beside everything that is stored or handed out: CRC-32 (the polynomial of ISO/IEC 3309 and of PNG) over
 * the two bytes of every UTF-16 unit, high byte first, as eight hexadecimal digits. It finds every flipped bit and every
 * burst of up to 32 bits: damage, not deceit.
 */
export function checkSum(text: string): string {
  const known = knownSums.find((one) => one.text === text);
  if (known !== undefined) return known.sum;
  const sum = remainderOf(text).toString(16).padStart(8, "0");
  if (text.length >= longText && text.length <= longestKept)
    knownSums = [{ text, sum }, ...knownSums].slice(0, mostKnown);
  return sum;
}

/**
 * The long texts summed last. A save looks at the same few again and again: what it writes, what lay there before, and
 * both once more when it has been written. Telling that a text is the very same one is a hundred times quicker.
 */
let knownSums: readonly { readonly text: string; readonly sum: string }[] = [];
const mostKnown = 6;
/** Characters, from which on it is worth it. */
const longText = 1_000;
/** Characters, up to which six of them may be kept. */
const longestKept = 500_000;

function remainderOf(text: string): number {
  let remainder = ~0;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    remainder = nextRemainder(nextRemainder(remainder, unit >>> 8), unit & 0xff);
  }
  return ~remainder >>> 0;
}

const remainders = Int32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = (remainder >>> 1) ^ (remainder & 1 ? 0xedb88320 : 0);
  return remainder;
});

const nextRemainder = (remainder: number, byte: number): number =>
  (remainder >>> 8) ^ (remainders[(remainder ^ byte) & 0xff] ?? 0);
