import { checkSum } from "./checkSum";
import { orNotSaved } from "./changeFitting";
import type { Drawers } from "./drawers";
import type { NotSaved } from "./fittingOutcome";
import { layInQuarantine } from "./quarantine";

/**
 * What this device remembers that is no part of any fitting: the last fitting opened, the colours, when a backup was
 * last taken. A screen must do without any of it, so reading never fails; unreadable settings count as none.
 */
export type SettingValue = string | number | boolean | null;
export interface DeviceSettings {
  readonly [name: string]: SettingValue;
}

const settingsKey = "device";
const settingsFormat = 1;

export async function loadSettings(drawers: Drawers): Promise<DeviceSettings> {
  try {
    return readSettings(await drawers.look((open) => open.read("settings", settingsKey))) ?? {};
  } catch {
    return {};
  }
}

/** Lays these values over those kept before; null takes one away. */
export async function saveSettings(
  drawers: Drawers,
  values: DeviceSettings,
  now: string,
): Promise<{ readonly kind: "saved" } | NotSaved> {
  return orNotSaved<{ readonly kind: "saved" } | NotSaved>(drawers, async (open) => {
    const found = await open.read("settings", settingsKey);
    const before = readSettings(found);
    if (found !== undefined && before === null)
      await layInQuarantine(open, "settings", { key: settingsKey, value: found }, now);
    const kept = Object.entries({ ...before, ...values }).filter(([, value]) => value !== null);
    const text = JSON.stringify(Object.fromEntries(kept));
    await open.write("settings", settingsKey, { format: settingsFormat, text, check: checkSum(text) });
    return { kind: "saved" };
  });
}

function readSettings(found: unknown): DeviceSettings | null {
  if (typeof found !== "object" || found === null) return null;
  const { format, text, check } = found as { readonly [name: string]: unknown };
  if (format !== settingsFormat || typeof text !== "string" || checkSum(text) !== check) return null;
  try {
    return JSON.parse(text) as DeviceSettings;
  } catch {
    return null;
  }
}
