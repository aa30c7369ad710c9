/**
 * The check kept beside everything that is stored or handed out: CRC-32 (the polynomial of ISO/IEC 3309 and of PNG) over
 * the two bytes of every UTF-16 unit, high byte first, as eight hexadecimal digits. It finds every flipped bit and every
 * burst of up to 32 bits: damage, not deceit.
 */
export function checkSum(text: string): string {
  let remainder = ~0;
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i);
    remainder = nextRemainder(nextRemainder(remainder, unit >>> 8), unit & 0xff);
  }
  return (~remainder >>> 0).toString(16).padStart(8, "0");
}

const remainders = Int32Array.from({ length: 256 }, (_, byte) => {
  let remainder = byte;
  for (let bit = 0; bit < 8; bit += 1) remainder = (remainder >>> 1) ^ (remainder & 1 ? 0xedb88320 : 0);
  return remainder;
});

const nextRemainder = (remainder: number, byte: number): number =>
  (remainder >>> 8) ^ (remainders[(remainder ^ byte) & 0xff] ?? 0);
