import { useRef, useState } from "react";
import { paddedDraftKey } from "../../../app/session/commands";
import type { MeasurementName } from "../../../core/body/vocabulary";
import { parseLength } from "../../../core/lengthText";
import type { Millimetres } from "../../../core/units";
import { measurementTexts } from "../../../text/measurements";
import { bandWords } from "../../../text/stops";
import { useLengths, useStoreItself } from "../../kit/useStore";
import type { StepAtHand } from "./useStep";

export interface ReadingAsked {
  readonly asked: MeasurementName;
  /** Asked after it at this level; null for the last, after which the readings are noted. */
  readonly next: MeasurementName | null;
  readonly keep: () => void;
  readonly leaveOut: () => void;
  readonly take: (name: MeasurementName) => void;
}

/** Which reading is asked. Texts stay drafts until the level is done: they are noted together, as one look at the tape. */
export function useReadingAsked({ record }: StepAtHand, names: readonly MeasurementName[]): ReadingAsked {
  const store = useStoreItself();
  const { write } = useLengths();
  const [settled, setSettled] = useState<readonly MeasurementName[]>([]);
  const left = useRef(new Set<MeasurementName>());
  const [chosen, setChosen] = useState<MeasurementName | null>(null);
  const open = names.filter((name) => !settled.includes(name));
  const asked = chosen ?? open[0] ?? names[0] ?? "waistGirth";
  const next = open.find((name) => name !== asked) ?? null;
  const readings = () => {
    const { drafts, unit } = store.getState().fitting;
    return names.flatMap((name) => {
      const text = drafts.other[paddedDraftKey(name)];
      const length = text === undefined || left.current.has(name) ? null : parseLength(text, unit);
      return text !== undefined && length?.ok ? [{ name, text: text.trim(), length: length.value }] : [];
    });
  };
  const goOn = () => {
    setChosen(null);
    if (next !== null) return setSettled([...settled, asked]);
    const taken = readings();
    record(said(taken, write), { readings: Object.fromEntries(taken.map(({ name, text }) => [name, text])) });
  };
  return {
    asked,
    next,
    take: setChosen,
    keep: () => {
      left.current.delete(asked);
      if (readings().some(({ name }) => name === asked)) goOn();
    },
    leaveOut: () => {
      if (asked.endsWith("Girth")) return void record(bandWords.leaveAllOut, { readings: {} });
      left.current.add(asked);
      goOn();
    },
  };
}

const said = (
  taken: readonly { readonly name: MeasurementName; readonly length: Millimetres }[],
  write: (length: Millimetres) => string,
): string => taken.map(({ name, length }) => `${measurementTexts[name].label} ${write(length)}.`).join(" ");
