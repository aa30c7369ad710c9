import { dxfOfPart } from "../../src/app/patterns/patternDxf";
import { svgOfPart } from "../../src/app/patterns/patternSvg";
import { battingLayout, lengthOfRoll } from "../../src/app/supplies/battingLayout";
import { aroundPart } from "../../src/app/supplies/coverCloth";
import { shapesOf } from "../../src/app/supplies/fittingSupplies";
import { patternsOfText } from "../../src/command/patternsOfText";
import { type ArmPart, armParts } from "../../src/core/arm/armParts";
import { type ArmWish, softArm, usualArm } from "../../src/core/arm/softArm";
import { fittedCover } from "../../src/core/cover/fittedCover";
import { coverGround } from "../../src/core/cover/coverGround";
import { coverRows } from "../../src/core/cover/coverRows";
import { panelEdge, panelRow } from "../../src/core/cover/panelShape";
import { pointsPerRow } from "../../src/core/cover/panelMesh";
import { girthOf } from "../../src/core/geometry/outline";
import { lineLength, type PatternEdge, partOutline } from "../../src/core/pattern/patternPart";
import { planFitting } from "../../src/core/plan/planFitting";
import { battingGood } from "../../src/core/supplies/goods";
import { asCut, knit, libraryLength, woven } from "../core/cover/covers";
import { ellipse, madeUpArm } from "../core/arm/arms";
import { tiltedReads } from "../tools/tiltedWaist";
import { fittingFileOf, people } from "../tools/people";
import { apart, outlinesOfSvg, readDxf } from "../tools/readPatterns";

/**
 * The laws of what stands around the padding, and the worst that was seen over made-up people: `npm run study:job -- PEOPLE`. What is
 * built above the bust is told by `npm run study:above`.
 */
const count = Number(process.argv[2] ?? 200);
const everyone = people(count);

console.log(`| part | law | seen over ${count} made-up people: middle, 95 in 100, worst (mm) |\n|---|---|---|`);
if (isAsked("cover")) covers();
for (const cut of ["twoPieces", "onePiece"] as const) if (isAsked("arm")) arms({ ...usualArm, cut });
if (isAsked("patterns")) patterns();
if (isAsked("supplies")) layouts();
for (const tilt of [10, 20, 30, 40]) {
  const more = everyone.flatMap(({ body }) => [tilt, -tilt].map(tiltedReads(body)));
  tell("waist", `${tilt} mm of tilt read along it, more than level`, more, 1);
}

/** A part alone may be asked for, as `npm run study:job -- 200 patterns`. */
function isAsked(part: string): boolean {
  return process.argv[3] === undefined || process.argv[3] === part;
}

function tell(part: string, law: string, values: readonly number[], digits = 3): void {
  const sorted = values.map(Math.abs).toSorted((a, b) => a - b);
  const at = (share: number) =>
    (sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0).toFixed(digits);
  console.log(`| ${part} | ${law} | ${at(0.5)}, ${at(0.95)}, ${at(1)} (${sorted.length} readings) |`);
}

/** Girths of every row against its own surface, joined edges, and the girths of the level lines against the plan. */
function covers(): void {
  const [girths, joined, planned]: [number[], number[], number[]] = [[], [], []];
  for (const { body, form, batting } of everyone) {
    const plan = planFitting({ body, form, batting });
    const ground = coverGround(plan.levels, plan.pieces, {
      apexToApex: body.apexToApex ?? 190,
      lowerEdge: null,
      read: [],
    });
    const rows = coverRows(ground);
    for (const cloth of [woven, knit]) {
      const { panels } = fittedCover(ground, cloth);
      const cut = asCut(cloth);
      rows.forEach(({ tape: { quarters } }, row) => {
        const around = panels.reduce((sum, { shape }) => sum + libraryLength(panelRow(shape, row)), 0);
        girths.push(around / cut.across - girthOf(quarters));
      });
      panels.forEach(({ shape }, i) => {
        const next = panels[(i + 1) % panels.length] as (typeof panels)[number];
        joined.push(libraryLength(panelEdge(shape, pointsPerRow - 1)) - libraryLength(panelEdge(next.shape, 0)));
      });
      for (const { name, predicted } of plan.levels) {
        const drawn = panels.flatMap(({ levels }) => levels.filter((level) => level.name === name));
        planned.push(drawn.reduce((sum, { length }) => sum + length, 0) / cut.across - predicted.girth);
      }
    }
  }
  tell("cover", "girth of every row, sewn together, is the surface's (1)", girths);
  tell("cover", "joined edges are equal (0.5)", joined);
  tell("cover", "girth at the level lines is what the plan foretells (1)", planned);
}

function arms(wish: ArmWish): void {
  const [girths, seams, caps, discs]: [number[], number[], number[], number[]] = [[], [], [], []];
  for (let seed = 1; seed <= count; seed++) {
    const cloth = seed % 2 === 0 ? woven : knit;
    const arm = softArm(madeUpArm(seed), cloth, wish);
    const parts = armParts(arm);
    const across = cloth.kind === "knit" ? 1 + cloth.stretch : 1;
    for (const line of ["upperArm", "elbow"] as const) {
      const drawn = parts.flatMap(({ part }) =>
        part.lines.filter(({ kind, name }) => kind === "level" && name === line),
      );
      if (drawn.length > 0) girths.push(across * sumOf(drawn) - arm.girths[line]);
    }
    girths.push(across * sumOf(edgesNamed(parts, /-(upper|under)(W|-w)rist$/)) - arm.girths.wrist);
    const edges = new Map(parts.flatMap(({ part }) => part.edges.map((edge) => [edge.id, edge] as const)));
    for (const { points, sewnTo } of edges.values()) {
      const other = sewnTo === null ? undefined : edges.get(sewnTo);
      if (other !== undefined) seams.push(lineLength(points) - lineLength(other.points));
    }
    const { breadth, height } = arm.capDisc;
    caps.push(sumOf(edgesNamed(parts, /-(upper|under)(C|-c)ap$/)) - ellipse(breadth, height));
    const wrist = parts.find(({ name }) => name === "wristDisc");
    if (wrist !== undefined) discs.push(across * aroundPart(wrist.part) - arm.girths.wrist);
  }
  const title = `arm, ${wish.cut === "twoPieces" ? "two pieces" : "one piece"}`;
  tell(title, "girths read on the drawing (0.5)", girths);
  tell(title, "joined edges are equal (0.5)", seams);
  tell(title, "caps are as long as the oval's edge (1)", caps);
  tell(title, "the wrist disc's edge is the wrist (0.5)", discs);
}

function sumOf(lines: readonly Pick<PatternEdge, "points">[]): number {
  return lines.reduce((sum, { points }) => sum + lineLength(points), 0);
}

function edgesNamed(parts: readonly ArmPart[], name: RegExp): readonly PatternEdge[] {
  return parts.flatMap(({ part }) => part.edges.filter(({ id }) => name.test(id)));
}

/** Every part of every person, written as a drawing and as an exchange drawing and read back by other people's parsers. */
function patterns(): void {
  const [svg, dxf]: [number[], number[]] = [[], []];
  for (const one of everyone) {
    const file = fittingFileOf({ ...one, body: { ...one.body, ...madeUpArm(one.seed) } });
    const made = patternsOfText(JSON.stringify(file), one.seed % 2 === 0 ? woven : knit);
    if (!made.ok) throw new Error(made.problem.join(" "));
    for (const titled of made.value.parts) {
      const planned = partOutline(titled.part).map(({ x, y }) => [x, y] as const);
      svg.push(apart(planned, [...outlinesOfSvg(svgOfPart(titled)).values()][0] ?? []));
      dxf.push(apart(planned, readDxf(dxfOfPart(titled)).outlines[0] ?? []));
    }
  }
  tell("patterns", "outline read back from SVG (0.2)", svg);
  tell("patterns", "outline read back from DXF (0.2)", dxf);
}

/** Every layer of every person on a roll: whether all lie on it and none over another, and how much of it is used. */
function layouts(): void {
  const [lying, lengths]: [number[], number[]] = [[], []];
  for (const { body, form, batting } of everyone) {
    const shapes = planFitting({ body, form, batting }).pieces.flatMap(shapesOf);
    const layout = battingLayout(shapes, battingGood("roll-115-cm"), "cm");
    const boxes = layout.sheets.flatMap(({ shapes: laid }) => laid.length);
    lying.push(shapes.length - boxes.reduce((sum, some) => sum + some, 0) - layout.tooLarge.length);
    lengths.push(lengthOfRoll(layout));
  }
  tell("supplies", "every layer lies on the roll (0 left out)", lying, 0);
  tell("supplies", "length of a roll 115 cm wide", lengths, 0);
}
