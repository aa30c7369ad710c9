import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { dxfOfPart, dxfOfParts } from "../app/patterns/patternDxf";
import { rollWidths, sheetPdf, tiledPdf } from "../app/patterns/patternPdf";
import { svgOfPart, svgOfParts } from "../app/patterns/patternSvg";
import { patternProblems, patternWords } from "../text/patterns";
import type { FittingPatterns } from "../app/patterns/fittingPatterns";

const listName = "patterns.json";

/** Every file of a fitting's patterns, by name. */
export async function patternFiles({
  file,
  parts,
}: FittingPatterns): Promise<ReadonlyMap<string, string | Uint8Array>> {
  const files = new Map<string, string | Uint8Array>(
    parts.flatMap((titled) => [
      [`${titled.part.id}.svg`, svgOfPart(titled)],
      [`${titled.part.id}.dxf`, dxfOfPart(titled)],
    ]),
  );
  files.set("all.svg", svgOfParts(parts, rollWidths.sheet));
  files.set("all.dxf", dxfOfParts(parts, rollWidths.sheet));
  files.set("tiles-letter.pdf", await tiledPdf(parts, "letter", patternWords));
  files.set("tiles-a4.pdf", await tiledPdf(parts, "a4", patternWords));
  files.set("sheet.pdf", await sheetPdf(parts, "sheet", patternWords));
  files.set("sheet-a0.pdf", await sheetPdf(parts, "sheetA0", patternWords));
  const names = [listName, ...files.keys()];
  return new Map([[listName, `${JSON.stringify({ ...file, files: names }, null, 1)}\n`], ...files]);
}

/** Why a folder is left alone: it is a file, or holds what this command did not write; null when it may be written. */
export function folderProblem(folder: string): string | null {
  if (!existsSync(folder)) return null;
  if (!statSync(folder).isDirectory()) return patternProblems.isFile(folder);
  const ours = new Set(writtenBefore(folder));
  const other = readdirSync(folder).find((name) => !ours.has(name));
  return other === undefined ? null : patternProblems.otherFiles(folder, other);
}

/** Writes the files, and takes away what an earlier run wrote and this one does not. The list comes last. */
export function writeFolder(folder: string, files: ReadonlyMap<string, string | Uint8Array>): void {
  mkdirSync(folder, { recursive: true });
  const before = writtenBefore(folder);
  for (const [name, content] of files) if (name !== listName) writeFileSync(join(folder, name), content);
  for (const name of before) if (!files.has(name)) rmSync(join(folder, name), { force: true });
  writeFileSync(join(folder, listName), files.get(listName) ?? "");
}

function writtenBefore(folder: string): readonly string[] {
  try {
    const { files } = JSON.parse(readFileSync(join(folder, listName), "utf8")) as { readonly files?: unknown };
    return Array.isArray(files) ? files.filter((name) => typeof name === "string" && /^[\w.-]+$/.test(name)) : [];
  } catch {
    return [];
  }
}
