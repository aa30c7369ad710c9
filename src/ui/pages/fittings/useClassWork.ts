import { useEffect, useRef, useState } from "react";
import { fittingStore, type FittingStore } from "../../../app/session/store";
import type { FittingStorage } from "../../../app/storage/fittingStorage";
import {
  type ClassSupplies,
  classSupplies,
  type ShareOfClass,
  shareOfClass,
} from "../../../app/supplies/classSupplies";
import type { LengthUnit } from "../../../core/lengthText";
import type { Fitting } from "../../../document/fitting";
import { letters } from "../../../app/patterns/letters";
import { derivationOf } from "../../kit/useDerived";
import type { ClassPaper, PersonOnPaper } from "./ClassSheets";
import { openedEntry } from "./fittingEntry";

/** One of those who take part, with the name that stands on paper. */
export interface Student {
  readonly id: string;
  readonly name: string;
  /** Kept when others come or go; the letter of the pieces follows from it. */
  readonly number: number;
}

/** What was made for everyone, without those who have no plan yet. */
export type MadeForClass = { readonly leftOut: readonly string[] } & (
  | {
      readonly kind: "sheets";
      readonly paper: ClassPaper;
      readonly people: readonly PersonOnPaper[];
      readonly isWhole: boolean;
    }
  | { readonly kind: "supplies"; readonly supplies: ClassSupplies; readonly names: readonly string[] }
);

interface ClassWork {
  /** Which fitting is being worked out, counted from 1; null while nothing is. */
  readonly at: number | null;
  readonly made: MadeForClass | null;
  readonly print: (paper: ClassPaper) => void;
  readonly addUp: () => void;
  readonly putAway: () => void;
}

/**
 * What is made for a class: each fitting is read and planned, one after the other, with time for the screen in between. It counts
 * for these students in this state (`state`) and for no others.
 */
export function useClassWork(
  storage: FittingStorage,
  unit: LengthUnit,
  students: readonly Student[],
  state: string,
): ClassWork {
  const [at, setAt] = useState<number | null>(null);
  const [found, setFound] = useState<{ readonly state: string; readonly made: MadeForClass } | null>(null);
  const isHere = useRef(true);
  useEffect(() => {
    isHere.current = true;
    return () => {
      isHere.current = false;
    };
  }, []);
  const forEach: ForEach = async (take) => {
    const leftOut: string[] = [];
    for (const [i, { id, name, number }] of students.entries()) {
      setAt(i + 1);
      await afterPaint();
      const opened = await openedEntry(storage, id);
      if (!isHere.current) break;
      if (opened === null || !take(opened.fitting, name, letters(number - 1))) leftOut.push(name);
    }
    setAt(null);
    return leftOut;
  };
  const show = (made: MadeForClass) => setFound({ state, made });
  const begin = (work: Promise<MadeForClass>) => {
    setFound(null);
    void work.then(show);
  };
  return {
    at,
    made: found?.state === state ? found.made : null,
    print: (paper) => begin(paper === "measuring" ? blankSheets(students) : plannedSheets(paper, forEach, show)),
    addUp: () => begin(addedUp(forEach, unit)),
    putAway: () => setFound(null),
  };
}

/** Names those whom `take` could make nothing of. */
type ForEach = (take: (fitting: Fitting, name: string, letter: string) => boolean) => Promise<readonly string[]>;

/** Shows everyone's sheets as soon as they are there. */
async function plannedSheets(
  paper: ClassPaper,
  forEach: ForEach,
  show: (made: MadeForClass) => void,
): Promise<MadeForClass> {
  const sheets = { kind: "sheets", paper, leftOut: [] } as const;
  const people: PersonOnPaper[] = [];
  const leftOut = await forEach((fitting, name) => {
    const store = orNone(() => plannedStore({ ...fitting, title: name }));
    if (store === null) return false;
    people.push({ name, store });
    show({ ...sheets, people: people.slice(), isWhole: false });
    return true;
  });
  return { ...sheets, people, leftOut, isWhole: true };
}

async function blankSheets(students: readonly Student[]): Promise<MadeForClass> {
  const people = students.map(({ name }) => ({ name, store: null }));
  return { kind: "sheets", paper: "measuring", people, leftOut: [], isWhole: true };
}

async function addedUp(forEach: ForEach, unit: LengthUnit): Promise<MadeForClass> {
  const shares: ShareOfClass[] = [];
  const names: string[] = [];
  const leftOut = await forEach((fitting, name, letter) => {
    const share = orNone(() => shareOfClass(fitting, letter));
    if (share === null) return false;
    shares.push(share);
    names.push(`${letter} ${name}`);
    return true;
  });
  return { kind: "supplies", supplies: classSupplies(shares, unit), names, leftOut };
}

function plannedStore(fitting: Fitting): FittingStore | null {
  const store = fittingStore(fitting);
  return derivationOf(store)(fitting).planning.kind === "planned" ? store : null;
}

/** One fitting that the planner fails on leaves the others as they are. */
function orNone<Found>(work: () => Found | null): Found | null {
  try {
    return work();
  } catch {
    return null;
  }
}

/** Two frames of a slow tablet, so that the count is seen before the planning goes on. */
const afterPaint = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, 40));
