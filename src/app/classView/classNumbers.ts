import type { DeviceSettings } from "../storage/deviceSettings";

/**
 * The number, from 1, that everyone of a class keeps on this device: once given it stays, whoever comes or goes, so that sheets and
 * letters printed at different times match. Those without one get the next ones, in the order they are named here.
 */
export function classNumbers(settings: DeviceSettings, ids: readonly string[]): ReadonlyMap<string, number> {
  const numbers = new Map<string, number>();
  let last = Math.max(0, ...Object.entries(settings).map(([name, value]) => (isNumber(name, value) ? value : 0)));
  for (const id of ids) {
    const name = settingOf(id);
    const kept = settings[name];
    if (isNumber(name, kept)) numbers.set(id, kept);
    else {
      last += 1;
      numbers.set(id, last);
    }
  }
  return numbers;
}

/** What of these the device does not remember yet; null where it remembers all. */
export function numbersToKeep(settings: DeviceSettings, numbers: ReadonlyMap<string, number>): DeviceSettings | null {
  const fresh = [...numbers].flatMap(([id, number]) =>
    settings[settingOf(id)] === number ? [] : [[settingOf(id), number] as const],
  );
  return fresh.length === 0 ? null : Object.fromEntries(fresh);
}

const prefix = "classNumber ";
const settingOf = (id: string): string => `${prefix}${id}`;

const isNumber = (name: string, value: DeviceSettings[string] | undefined): value is number =>
  name.startsWith(prefix) && typeof value === "number" && Number.isInteger(value) && value > 0;
