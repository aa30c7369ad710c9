import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** The words on each page of a PDF. */
export async function pdfText(pdf: Buffer): Promise<readonly string[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(
      items
        .map((item) => ("str" in item ? item.str : ""))
        .join(" ")
        .replace(/\s+/g, " "),
    );
  }
  await document.destroy();
  return pages;
}

/** A stretch of words in a PDF and how high its letters stand, in points. */
export interface PdfWords {
  readonly page: number;
  readonly words: string;
  readonly size: number;
}

/** Every stretch of words in a PDF with the size it is printed at, pictures and their scale included. */
export async function pdfWordSizes(pdf: Buffer): Promise<readonly PdfWords[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const found: PdfWords[] = [];
  for (let page = 1; page <= document.numPages; page += 1) {
    const { items } = await (await document.getPage(page)).getTextContent();
    for (const item of items) {
      if (!("str" in item) || item.str.trim() === "") continue;
      const [, , across = 0, up = 0] = item.transform as readonly number[];
      found.push({ page, words: item.str, size: Math.hypot(across, up) });
    }
  }
  await document.destroy();
  return found;
}
