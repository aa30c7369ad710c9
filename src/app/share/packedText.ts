/**
 * Text made short for an address, with the browser's own DEFLATE (RFC 1951), and made long again. A browser without it
 * packs nothing, and cannot open what another has packed. Unpacking stops at a limit: a few bytes can stand for
 * gigabytes.
 */
export async function packed(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array | null> {
  const stream = transformed(bytes, () => new CompressionStream("deflate-raw"));
  return stream && readWhole(stream, Number.POSITIVE_INFINITY);
}

export async function unpacked(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<Uint8Array | null> {
  const stream = transformed(bytes, () => new DecompressionStream("deflate-raw"));
  return stream && readWhole(stream, most);
}

export const canUnpack = (): boolean =>
  transformed(new Uint8Array(), () => new DecompressionStream("deflate-raw")) !== null;

type Squeeze = () => GenericTransformStream;

function transformed(bytes: Uint8Array<ArrayBuffer>, squeeze: Squeeze): ReadableStream<Uint8Array> | null {
  try {
    return new Blob([bytes]).stream().pipeThrough(squeeze());
  } catch {
    return null;
  }
}

async function readWhole(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array | null> {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  try {
    for (let next = await reader.read(); !next.done; next = await reader.read()) {
      length += next.value.length;
      if (length > most) {
        await reader.cancel();
        return null;
      }
      parts.push(next.value);
    }
  } catch {
    return null;
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
