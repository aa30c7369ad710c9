/** Bytes as text that may stand in an address: RFC 4648 section 5, without padding. */
export function toBase64url(bytes: Uint8Array): string {
  const characters = Array.from(bytes, (byte) => String.fromCharCode(byte)).join("");
  return btoa(characters).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

export function fromBase64url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[A-Za-z0-9_-]*$/.test(text)) return null;
  try {
    const characters = atob(text.replaceAll("-", "+").replaceAll("_", "/"));
    return Uint8Array.from(characters, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}
