import { useCallback, useMemo, useState } from "react";
import type { LengthUnit } from "../../../core/lengthText";
import { likeStep } from "../../../app/classView/likeStep";
import { madeUpPeople, madeUpPerson, type ClassPerson } from "../../../app/classView/classPeople";
import {
  type ClassAction,
  type ClassRoom,
  classAfter,
  classStart,
  type ClassState,
} from "../../../app/classView/classState";
import { type ClassTyped, type TypedName, type TypedReading, withTyped } from "../../../app/classView/classTyped";
import { type ClassView, classView } from "../../../app/classView/classView";
import { useUnit } from "../../kit/useStore";

/** What the class view shows, and what moves it. */
export interface ClassScreenState {
  readonly state: ClassState;
  readonly person: ClassPerson;
  readonly view: ClassView | null;
  readonly move: (action: ClassAction) => void;
  readonly turnUnit: () => void;
  readonly keepTyped: (name: TypedName, reading: TypedReading | null) => void;
}

/** The fitting that is open and the sample people, one of them in the class view; all of it is forgotten on leaving. */
export function useClassScreen(own: ClassPerson | null): ClassScreenState {
  const ownStep = own === null ? null : own.job.now;
  const isOwnMadeUp = own?.isMadeUp ?? true;
  const [state, setState] = useState<ClassState>(() => classStart({ ownStep, isOwnMadeUp }));
  const person = usePerson(state.person, own);
  const { job } = person;
  const room = useMemo(
    (): ClassRoom => ({
      steps: job.steps.length,
      ownStep,
      isOwnMadeUp,
      madeUpPeople,
      stepOf: (madeUp) => likeStep(job, state.step, madeUpPerson(madeUp).job),
    }),
    [job, ownStep, isOwnMadeUp, state.step],
  );
  const ownUnit = useUnit();
  const [unit, setUnit] = useState<LengthUnit>(ownUnit);
  const [typed, setTyped] = useState<{ readonly [person: string]: ClassTyped }>({});
  const { person: whose, step } = state;
  const typedHere = typed[whose];
  return {
    state,
    person,
    view: useMemo(() => classView(person, state, unit, typedHere), [person, state, unit, typedHere]),
    move: useCallback((action) => setState((before) => classAfter(before, action, room)), [room]),
    turnUnit: useCallback(() => setUnit((before) => (before === "in" ? "cm" : "in")), []),
    keepTyped: useCallback(
      (name, reading) =>
        setTyped((before) => ({ ...before, [whose]: withTyped(before[whose] ?? {}, step, name, reading) })),
      [whose, step],
    ),
  };
}

/** Who stands in the class view: without a plan of the fitting that is open a made-up person. */
function usePerson(shown: ClassState["person"], own: ClassPerson | null): ClassPerson {
  // Notes to the steps of a sample person are the class's own; a measured person's stay with her.
  const notes = own?.isMadeUp === true ? own.notes : null;
  const madeUp = useMemo(
    () => (shown === "own" ? null : { ...madeUpPerson(shown), ...(notes === null ? {} : { notes }) }),
    [shown, notes],
  );
  const fallback = useMemo(() => madeUpPerson(0), []);
  return madeUp ?? own ?? fallback;
}
