/** Instants as a person reads them, in the language of the browser. What cannot be read as an instant is left out. */
export const dayText = (instant: string): string => written(instant, styles.day);

/** A day that stands as an ISO date, whatever the time zone. */
export const dateText = (date: string): string => written(date, styles.date);

export const timeText = (instant: string): string => written(instant, styles.time);

export const momentText = (instant: string): string => written(instant, styles.moment);

const styles = {
  day: { dateStyle: "medium" },
  date: { dateStyle: "medium", timeZone: "UTC" },
  time: { timeStyle: "short" },
  moment: { dateStyle: "medium", timeStyle: "short" },
} as const satisfies { readonly [name: string]: Intl.DateTimeFormatOptions };

/** Making one takes a browser longer than all that is written with it. */
const formats = new Map<Intl.DateTimeFormatOptions, Intl.DateTimeFormat>();

function formatOf(style: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  const format = formats.get(style) ?? new Intl.DateTimeFormat(undefined, style);
  formats.set(style, format);
  return format;
}

function written(instant: string, style: Intl.DateTimeFormatOptions): string {
  const date = new Date(instant);
  return Number.isNaN(date.getTime()) ? "" : formatOf(style).format(date);
}

export const presentInstant = (): string => new Date().toISOString();
