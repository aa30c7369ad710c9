import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A stretch of words in a PDF and how high its letters stand, in points: pictures and their scale are counted in. */
export interface PdfWords {
  readonly words: string;
  readonly size: number;
}

export interface PdfPage {
  readonly text: string;
  readonly words: readonly PdfWords[];
}

/** What stands on each page of a PDF. */
export async function pdfPages(pdf: Buffer): Promise<readonly PdfPage[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
  const pages: PdfPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    const words = items.flatMap((item) => {
      if (!("str" in item)) return [];
      const [, , across = 0, up = 0] = item.transform as readonly number[];
      return [{ words: item.str, size: Math.hypot(across, up) }];
    });
    const text = items
      .map((item) => ("str" in item ? item.str : ""))
      .join(" ")
      .replace(/\s+/g, " ");
    pages.push({ text, words: words.filter((each) => each.words.trim() !== "") });
  }
  await document.destroy();
  return pages;
}
