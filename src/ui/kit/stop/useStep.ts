import { useMemo, useRef, useState } from "react";
import { paddedDraftKey } from "../../../app/session/commands";
import { type CurrentStep, piecesNamed } from "../../../app/steps/currentStep";
import { pinnedPieces } from "../../../app/steps/route";
import type { Step } from "../../../app/steps/step";
import { workEntry } from "../../../app/steps/workEntry";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { parseLength } from "../../../core/lengthText";
import type { Piece } from "../../../core/padding/piece";
import type { Millimetres } from "../../../core/units";
import type { SettledFitting } from "../../../document/fitting";
import { measurementTexts } from "../../../text/measurements";
import { planWords } from "../../../text/plan";
import { type StepSaying, type StepWords, stepWords } from "../../../text/steps";
import { bandWords } from "../../../text/stops";
import { useDoAndSay } from "../shelf/useDone";
import { useFitting, useLengths, useStoreItself } from "../useStore";

/** The one next step with all that a stop needs to show it. */
export interface StepAtHand extends CurrentStep {
  readonly fitting: SettledFitting;
  readonly saying: StepSaying;
  readonly words: StepWords;
  readonly pinned: readonly Piece[];
  /** What comes next is being worked out: the step is the last one still. */
  readonly isWorking: boolean;
  /** Notes the step as done, with what was read or counted; nothing while another step is being worked out. */
  readonly record: (said: string, taken?: object) => boolean;
  /** Passes over what the tape could still tell of the pieces as they are: nothing is tuned by it. */
  readonly passOver: (said: string) => void;
}

export function useStepAtHand(current: CurrentStep, isWorking: boolean): StepAtHand {
  const fitting = useFitting();
  const { step: lengths } = useLengths();
  const doAndSay = useDoAndSay();
  return useMemo(() => {
    const { step, plan, facts } = current;
    const saying = { lengths, levels: plan.levels, pieces: piecesNamed(current, fitting), facts };
    const from = { plan, fitting, words: planWords(lengths) };
    return {
      ...current,
      fitting,
      saying,
      words: stepWords(step, saying),
      pinned: [...pinnedPieces(fitting.work).values()],
      isWorking,
      record: (said, taken) => {
        const entry = isWorking ? null : workEntry(step, from, new Date().toISOString(), taken);
        return entry !== null && doAndSay({ does: "record", entry }, said);
      },
      passOver: (said) => {
        const entry = { did: "measured", readings: {}, at: new Date().toISOString() } as const;
        if (!isWorking) doAndSay({ does: "record", entry }, said);
      },
    };
  }, [current, fitting, lengths, isWorking, doAndSay]);
}

export interface ReadingAsked {
  readonly asked: MeasurementName;
  /** Asked after it at this level; null for the last, after which the readings are noted. */
  readonly next: MeasurementName | null;
  /** The readings are noted, and what is asked next is being worked out: what is typed now belongs to that. */
  readonly isAhead: boolean;
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

/** Which reading is asked. Texts stay drafts until the level is done: they are noted together, as one look at the tape. */
export function useReadingAsked(
  { step, record, isWorking }: StepAtHand,
  names: readonly MeasurementName[],
): ReadingAsked {
  const store = useStoreItself();
  const { write } = useLengths();
  const asking = `${step.do} ${names.join()}`;
  const [going, setGoing] = useState<Going>({ asking, settled: [], chosen: null });
  // Another level, or the same one asked again, begins anew; the field that is typed into stays.
  const { settled, chosen }: Going = going.asking === asking ? going : { asking, settled: [], chosen: null };
  const [noted, setNoted] = useState<Step | null>(null);
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
  const goOn = () => {
    setGoing({ asking, settled: next === null ? settled : [...settled, asked], chosen: null });
    if (next !== null) return;
    const taken = readings();
    note(said(taken, write), Object.fromEntries(taken.map(({ name, text }) => [name, text])));
  };
  const note = (said: string, readings: { readonly [name in MeasurementName]?: string }) => {
    if (record(said, { readings })) setNoted(step);
  };
  return {
    asked,
    next,
    isAhead: isWorking && noted === step,
    take: (name) => setGoing({ asking, settled, chosen: name }),
    keep: () => {
      left().delete(asked);
      if (readings().some(({ name }) => name === asked)) goOn();
    },
    leaveOut: () => {
      if (asked.endsWith("Girth")) return note(bandWords.leaveAllOut, {});
      left().add(asked);
      goOn();
    },
  };
}

const said = (
  taken: readonly { readonly name: MeasurementName; readonly length: Millimetres }[],
  write: (length: Millimetres) => string,
): string => taken.map(({ name, length }) => `${measurementTexts[name].label} ${write(length)}.`).join(" ");
