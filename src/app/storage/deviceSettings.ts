import { checkSum } from "./checkSum";
import type { StoresToChange, StoresToRead } from "./objectStores";
import { fieldsOf } from "./fields";
import { layInQuarantine } from "./quarantine";

/** What this device remembers that is no part of any fitting. A screen must do without any of it. */
export type SettingValue = string | number | boolean | null;
export interface DeviceSettings {
  readonly [name: string]: SettingValue;
}

const settingsKey = "device";
const settingsFormat = 1;

export const loadSettings = async (open: StoresToRead): Promise<DeviceSettings> =>
  readSettings(await open.read("settings", settingsKey)) ?? {};

/** Lays these values over those kept before; null takes one away. */
export async function saveSettings(
  open: StoresToChange,
  values: DeviceSettings,
  now: string,
): Promise<{ readonly kind: "saved" }> {
  const value = await open.read("settings", settingsKey);
  const before = readSettings(value);
  const isDamaged = value !== undefined && before === null;
  if (isDamaged) await layInQuarantine(open, "settings", { key: settingsKey, value }, now);
  const kept = Object.entries({ ...before, ...values }).filter(([, setting]) => setting !== null);
  const text = JSON.stringify(Object.fromEntries(kept));
  await open.write("settings", settingsKey, { format: settingsFormat, text, check: checkSum(text) });
  return { kind: "saved" };
}

function readSettings(found: unknown): DeviceSettings | null {
  const { format, text, check } = fieldsOf(found);
  const isWhole = format === settingsFormat && typeof text === "string" && checkSum(text) === check;
  return isWhole ? (JSON.parse(text) as DeviceSettings) : null;
}
