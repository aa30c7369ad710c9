export { presentInstant } from "../moment";

/** Zeitpunkte, wie man sie auf Deutsch schreibt. Was sich nicht als Zeitpunkt lesen lässt, bleibt weg. */
export const dayText = (instant: string): string => written(instant, { dateStyle: "medium" });

export const dateText = (date: string): string => written(date, { dateStyle: "medium", timeZone: "UTC" });

export const timeText = (instant: string): string => written(instant, { timeStyle: "short" });

export const momentText = (instant: string): string => written(instant, { dateStyle: "medium", timeStyle: "short" });

function written(instant: string, style: Intl.DateTimeFormatOptions): string {
  const date = new Date(instant);
  return Number.isNaN(date.getTime()) ? "" : new Intl.DateTimeFormat("de", style).format(date);
}
