import { useEffect, useRef, useState } from "react";
import { aheadDraftKey, paddedDraftKey } from "../../../app/session/commands";
import type { Step } from "../../../app/steps/step";
import type { LevelName, MeasurementName } from "../../../core/body/vocabulary";
import { parseLength } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { measurementTexts } from "../../../text/measurements";
import { bandWords } from "../../../text/stops";
import { useLengths, useStoreItself } from "../useStore";
import { useAheadInto } from "./useAheadInto";
import type { StepAtHand } from "./useStep";

export interface ReadingAsked {
  readonly level: LevelName;
  /** What is read at the level, in the order it is asked for. */
  readonly names: readonly MeasurementName[];
  readonly asked: MeasurementName;
  /** Asked after it at this level; null for the last, after which the readings are noted. */
  readonly next: MeasurementName | null;
  /** Where the text that is typed now is kept. */
  readonly draftKey: string;
  /** The readings are noted, and what is asked next is only being worked out. */
  readonly isUnknown: boolean;
  readonly keep: () => void;
  readonly leaveOut: () => void;
  readonly take: (name: MeasurementName) => void;
}

/** How far one asking has come: which readings it is done with, and which one was chosen to be taken again. */
interface Going {
  readonly asking: string;
  readonly settled: readonly MeasurementName[];
  readonly chosen: MeasurementName | null;
}

/**
 * Which reading is asked. Texts stay drafts until the level is done: they are noted together, as one look at the tape.
 * Nobody waits for what they taught: the next line of the step is asked at once, and noted as soon as it is known that it is
 * indeed what is asked.
 */
export function useReadingAsked({ step, record, isWorking }: StepAtHand): ReadingAsked {
  const store = useStoreItself();
  const { write } = useLengths();
  const [noted, setNoted] = useState<Step | null>(null);
  const isAhead = isWorking && noted === step;
  const { level, names } = asksOf(step, isAhead);
  const isUnknown = isAhead && level === levelOf(step);
  const asking = `${step.do} ${names.join()}`;
  const [going, setGoing] = useState<Going>({ asking, settled: [], chosen: null });
  // Another level, or the same one asked again, begins anew; the field that is typed into stays.
  const { settled, chosen }: Going = going.asking === asking ? going : { asking, settled: [], chosen: null };
  const leftOut = useRef({ asking, names: new Set<MeasurementName>() });
  const left = () => {
    if (leftOut.current.asking !== asking) leftOut.current = { asking, names: new Set() };
    return leftOut.current.names;
  };
  const open = names.filter((name) => !settled.includes(name));
  const asked = chosen ?? open[0] ?? names[0] ?? "waistGirth";
  const next = open.find((name) => name !== asked) ?? null;
  const readings = () => {
    const { drafts, unit } = store.getState().fitting;
    return names.flatMap((name) => {
      const text = drafts.other[paddedDraftKey(name)];
      const length = text === undefined || left().has(name) ? null : parseLength(text, unit);
      return text !== undefined && length?.ok ? [{ name, text: text.trim(), length: length.value }] : [];
    });
  };
  const note = (said: string, readings: { readonly [name in MeasurementName]?: string }) => {
    if (record(said, { readings })) setNoted(step);
  };
  const goOn = () => {
    setGoing({ asking, settled: next === null ? settled : [...settled, asked], chosen: null });
    if (next !== null) return;
    const taken = readings();
    note(said(taken, write), Object.fromEntries(taken.map(({ name, text }) => [name, text])));
  };
  const keep = () => {
    left().delete(asked);
    if (readings().some(({ name }) => name === asked)) goOn();
  };
  const draftKey = paddedDraftKey(asked);
  useAheadInto(draftKey, isUnknown);
  return {
    level,
    names,
    asked,
    next,
    draftKey: isUnknown ? aheadDraftKey : draftKey,
    isUnknown,
    take: (name) => setGoing({ asking, settled, chosen: name }),
    keep: useOnceKnown(keep, isAhead && next === null, `${asking} ${asked}`),
    leaveOut: () => {
      if (asked.endsWith("Girth")) return note(bandWords.leaveAllOut, {});
      left().add(asked);
      goOn();
    },
  };
}

/** What is pressed while it waits is done as soon as it need not wait any more, if the same is asked then. */
function useOnceKnown(act: () => void, mustWait: boolean, asking: string): () => void {
  const pressedAt = useRef<string | null>(null);
  useEffect(() => {
    if (mustWait || pressedAt.current === null) return;
    const isSame = pressedAt.current === asking;
    pressedAt.current = null;
    if (isSame) act();
  });
  return () => {
    if (mustWait) pressedAt.current = asking;
    else act();
  };
}

const levelOf = ({ levels }: Step): LevelName => levels[0] ?? "waist";

/** The readings of the step's first line; once these are noted, those of the line after it, if the step has one. */
function asksOf(
  step: Step,
  isAhead: boolean,
): { readonly level: LevelName; readonly names: readonly MeasurementName[] } {
  const first = levelOf(step);
  const at = (level: LevelName) => step.names.filter((name) => name.startsWith(level));
  const after = step.do === "check" ? undefined : step.levels.find((level) => level !== first && at(level).length > 0);
  const level = isAhead ? (after ?? first) : first;
  return { level, names: at(level) };
}

const said = (
  taken: readonly { readonly name: MeasurementName; readonly length: Millimetres }[],
  write: (length: Millimetres) => string,
): string => taken.map(({ name, length }) => `${measurementTexts[name].label} ${write(length)}.`).join(" ");
