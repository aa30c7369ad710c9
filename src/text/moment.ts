/** Instants as a person reads them, in the language of the browser. What cannot be read as an instant is left out. */
export const dayText = (instant: string): string => written(instant, { dateStyle: "medium" });

/** A day that stands as an ISO date, whatever the time zone. */
export const dateText = (date: string): string => written(date, { dateStyle: "medium", timeZone: "UTC" });

export const timeText = (instant: string): string => written(instant, { timeStyle: "short" });

export const momentText = (instant: string): string => written(instant, { dateStyle: "medium", timeStyle: "short" });

function written(instant: string, style: Intl.DateTimeFormatOptions): string {
  const date = new Date(instant);
  return Number.isNaN(date.getTime()) ? "" : new Intl.DateTimeFormat(undefined, style).format(date);
}

export const presentInstant = (): string => new Date().toISOString();
