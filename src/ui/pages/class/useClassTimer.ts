import { useEffect, useState } from "react";

/** Seconds spent at a step; null until the timer was started for the first time. */
export interface ClassTimer {
  readonly seconds: number | null;
  readonly isRunning: boolean;
  readonly toggle: () => void;
}

/** Counts the time of the step at hand, and begins anew with every other step. */
export function useClassTimer(step: string): ClassTimer {
  const [startedAt, setStartedAt] = useState<number | null>(null);
  const [counted, setCounted] = useState(0);
  const [wasStarted, setWasStarted] = useState(false);
  const [now, setNow] = useState(0);
  const [countedStep, setCountedStep] = useState(step);
  if (countedStep !== step) {
    setCountedStep(step);
    setCounted(0);
    if (startedAt !== null) setStartedAt(now);
  }
  const isRunning = startedAt !== null;
  useEffect(() => {
    if (!isRunning) return;
    const timer = setInterval(() => setNow(performance.now()), 250);
    return () => clearInterval(timer);
  }, [isRunning]);
  const toggle = () => {
    const moment = performance.now();
    setWasStarted(true);
    setNow(moment);
    if (startedAt !== null) setCounted(counted + moment - startedAt);
    setStartedAt(startedAt === null ? moment : null);
  };
  const passed = counted + (startedAt === null ? 0 : Math.max(0, now - startedAt));
  return { seconds: wasStarted ? Math.floor(passed / 1000) : null, isRunning, toggle };
}
