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
