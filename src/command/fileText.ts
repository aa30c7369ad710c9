/**
 * The text in the bytes of a file. A byte-order mark at its beginning says which encoding it is (some editors and shells
 * write one) and is no part of the text; without one it is UTF-8.
 */
export function fileText(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  return new TextDecoder("utf-8").decode(bytes);
}
