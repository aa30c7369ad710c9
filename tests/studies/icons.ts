import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { chromium } from "@playwright/test";
import { browserLaunch } from "../support/browser";

/** `npm run icons`: paints the icons of the installed tool from its one drawing. The result is committed. */
const folder = fileURLToPath(new URL("../../public/icons/", import.meta.url));
const drawing = readFileSync(`${folder}icon.svg`, "utf8");

interface Icon {
  readonly name: string;
  readonly size: number;
  /** How much of the side the drawing takes; of a maskable icon only the circle of eight tenths is sure to be seen. */
  readonly share: number;
  readonly corner: number;
}

const icons: readonly Icon[] = [
  { name: "icon-192.png", size: 192, share: 1, corner: 0.18 },
  { name: "icon-512.png", size: 512, share: 1, corner: 0.18 },
  { name: "icon-maskable-512.png", size: 512, share: 0.8, corner: 0 },
  { name: "icon-touch-180.png", size: 180, share: 1, corner: 0 },
];

const browser = await chromium.launch(browserLaunch());
for (const { name, size, share, corner } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const clip = `overflow:hidden;border-radius:${corner * size}px;width:${size}px;height:${size}px;background:#26345a`;
  const inner = `display:block;width:${share * 100}%;margin:${((1 - share) / 2) * size}px auto`;
  await page.setContent(`<body style="margin:0"><div style="${clip}"><div style="${inner}">${drawing}</div></div>`);
  writeFileSync(folder + name, await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
