import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "@playwright/test";

/**
 * Every page that this place prints on a paper, as a WebP picture. It needs pdftoppm (poppler-utils); without it there
 * are none, and it says so.
 */
export async function paperPictures(page: Page, paper: "Letter" | "A4"): Promise<readonly Uint8Array[]> {
  const folder = mkdtempSync(join(tmpdir(), "padwright-paper-"));
  writeFileSync(join(folder, "sheets.pdf"), await page.pdf({ format: paper, printBackground: true }));
  const call = ["-r", "66", "-gray", "-png", join(folder, "sheets.pdf"), join(folder, "page")];
  const { error, status } = spawnSync("pdftoppm", call, { stdio: ["ignore", "ignore", "inherit"] });
  if (error !== undefined || status !== 0) {
    console.log(`No pictures of ${paper}: pdftoppm (package poppler-utils) ${error ? "is not there" : "failed"}.`);
  }
  const pictures: Uint8Array[] = [];
  for (const name of readdirSync(folder).sort()) {
    if (name.endsWith(".png")) pictures.push(await asWebp(page, readFileSync(join(folder, name))));
  }
  rmSync(folder, { recursive: true, force: true });
  return pictures;
}

/** The browser at hand is the one encoder that is there for certain. */
async function asWebp(page: Page, png: Buffer): Promise<Uint8Array> {
  const address = await page.evaluate(
    async (source) => {
      const image = new Image();
      image.src = source;
      await image.decode();
      const canvas = document.createElement("canvas");
      [canvas.width, canvas.height] = [image.width, image.height];
      canvas.getContext("2d")?.drawImage(image, 0, 0);
      return canvas.toDataURL("image/webp", 0.4);
    },
    `data:image/png;base64,${png.toString("base64")}`,
  );
  return Buffer.from(address.replace(/^.*,/, ""), "base64");
}
