import tables from "../../shared/size-tables.json";
import type { Measurements } from "../../src/core/body/measurements";
import { mm } from "../../src/core/units";
import type { WholeBody } from "./peopleBody";
import type { Chance } from "./peopleChance";

/**
 * A stock form for a made-up body: a size of a published table (shared/size-tables.json, with sources), known only by
 * the table or measured by its owner, and sometimes a bit too large somewhere, which padding cannot mend.
 */
export const formKinds = ["as-the-table-says", "measured", "too-large"] as const;
export type FormKind = (typeof formKinds)[number];

export interface DrawnForm {
  readonly kind: FormKind;
  readonly form: Measurements;
}

export function drawForm(chance: Chance, body: WholeBody): DrawnForm {
  const kind = chance.pick(["as-the-table-says", "as-the-table-says", "measured", "measured", "measured", "too-large"]);
  const size = largestThatFits(body);
  const bare = {
    bustGirth: mm(size.bust),
    waistGirth: mm(size.waist),
    fullHipGirth: mm(size.fullHip),
    napeToWaist: mm(size.napeToWaist),
  };
  if (kind === "as-the-table-says") return { kind, form: bare };
  const owners = measuredForm(chance, body, size);
  return { kind, form: kind === "measured" ? owners : tooLarge(chance, body, chance.happens(0.5) ? owners : bare) };
}

interface Size {
  readonly bust: number;
  readonly waist: number;
  readonly fullHip: number;
  readonly napeToWaist: number;
}

const inch = 25.4;

const sizes: readonly Size[] = tables.tables.flatMap((table) =>
  table.fullHip === undefined || table.waist === undefined || table.napeToWaist === undefined
    ? []
    : table.sizes.map((_, i) => ({
        bust: inch * (table.bust[i] ?? 0),
        waist: inch * (table.waist[i] ?? 0),
        fullHip: inch * (table.fullHip[i] ?? 0),
        napeToWaist: inch * (table.napeToWaist[i] ?? 0),
      })),
);

/** Of all tables, the largest size with no girth above the body's; for a body below every size, the smallest size. */
function largestThatFits({ girth }: WholeBody): Size {
  const sum = (size: Size) => size.bust + size.waist + size.fullHip;
  const rising = [...sizes].sort((p, q) => sum(p) - sum(q));
  const fitting = rising.filter((s) => s.bust <= girth.bust && s.waist <= girth.waist && s.fullHip <= girth.fullHip);
  return fitting[fitting.length - 1] ?? (rising[0] as Size);
}

/**
 * The same form as its owner's tape finds it: girths a few millimetres off the table but none above the body's, front and
 * back apart, heights, sometimes breadths. Front shares of forms are plausible only, no source.
 */
function measuredForm(chance: Chance, body: WholeBody, size: Size): Measurements {
  const { girth } = body;
  const under = (value: number, bodyGirth: number) => Math.round(Math.min(value, bodyGirth));
  const bust = under(chance.normal(size.bust, 6), girth.bust);
  const waist = under(chance.normal(size.waist, 6), girth.waist);
  const fullHip = under(chance.normal(size.fullHip, 6), girth.fullHip);
  const girths = {
    bust,
    underbust: under(bust - chance.between(85, 130), girth.underbust),
    waist,
    highHip: under(waist + (fullHip - waist) * chance.between(0.5, 0.7), girth.highHip),
    fullHip,
  };
  const front = { bust: 54, underbust: 52, waist: 51, highHip: 49.5, fullHip: 48.5 } as const;
  const arcs = Object.entries(front).flatMap(([level, percent]) => {
    const whole = girths[level as keyof typeof front];
    const frontArc = Math.round((whole * chance.normal(percent, 0.8)) / 100);
    return [
      [`${level}Girth`, whole],
      [`${level}FrontArc`, frontArc],
      [`${level}BackArc`, whole - frontArc],
    ];
  });
  const breadths = chance.happens(0.25)
    ? { waistBreadth: mm(Math.round(0.345 * waist)), fullHipBreadth: mm(Math.round(0.35 * fullHip)) }
    : {};
  const toFullHip = Math.round(chance.between(180, 215));
  return {
    ...(Object.fromEntries(arcs) as Measurements),
    ...breadths,
    napeToWaist: mm(Math.round(chance.normal(size.napeToWaist, 5))),
    shoulderToApex: mm(Math.round(chance.normal(255 + 0.1 * (size.bust - 860), 6))),
    waistToHighHip: mm(Math.round(toFullHip / 2)),
    waistToFullHip: mm(toFullHip),
  };
}

/** One girth up to 30 mm above the body's; its arcs, where there are any, grow with it. */
function tooLarge(chance: Chance, { girth }: WholeBody, form: Measurements): Measurements {
  const level = chance.pick(["bust", "waist", "fullHip"]);
  const wanted = Math.round(girth[level] + chance.between(5, 30));
  const scale = wanted / (form[`${level}Girth`] ?? wanted);
  const frontArc = form[`${level}FrontArc`];
  const arcs =
    frontArc === undefined
      ? {}
      : {
          [`${level}FrontArc`]: mm(Math.round(frontArc * scale)),
          [`${level}BackArc`]: mm(wanted - Math.round(frontArc * scale)),
        };
  return { ...form, ...arcs, [`${level}Girth`]: mm(wanted) };
}
