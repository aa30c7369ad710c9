import { cpus, loadavg } from "node:os";

/** What a figure was measured on, and how busy that was, so that nobody compares two figures that cannot be compared. */
export function machine(): string {
  const all = cpus();
  return `${all.length} × ${all[0]?.model.trim() ?? "an unknown processor"}, load ${(loadavg()[0] ?? 0).toFixed(1)}, Node ${process.versions.node}`;
}
