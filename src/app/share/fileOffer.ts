/** Hands a text or bytes to the person as a file, through the browser's own download. Nothing leaves the device by it. */
export function offerFile(
  page: Document,
  name: string,
  content: string | Uint8Array<ArrayBuffer>,
  kind: FileKind,
): void {
  const address = URL.createObjectURL(new Blob([content], { type: fileKinds[kind] }));
  const link = page.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  // Some browsers read the address only after the click has been handled.
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}

const fileKinds = {
  json: "application/json",
  csv: "text/csv;charset=utf-8",
  txt: "text/plain;charset=utf-8",
  pdf: "application/pdf",
  svg: "image/svg+xml",
  dxf: "image/vnd.dxf",
} as const;
export type FileKind = keyof typeof fileKinds;

/** A name that every file system takes: `fitting Odile 2026-11-25.json`. The day is the first ten signs of the instant. */
export function fileName(what: string, title: string, now: string, kind: FileKind): string {
  const plain = title
    .normalize("NFC")
    .replace(/[^\p{Letter}\p{Mark}\p{Number} -]+/gu, " ")
    .replace(/\s+/g, " ")
    .trim();
  const short = [...plain].slice(0, 40).join("").trim();
  return `${[what, short, now.slice(0, 10)].filter((part) => part !== "").join(" ")}.${kind}`;
}
