import { relative } from "node:path";
import { declareClassPlugin, PluginKind } from "@stryker-mutator/api/plugin";
import type { MutantResult } from "@stryker-mutator/api/core";

/** Tells of each change that no test noticed when it is known, so that a test can be written while the others are tried. */
class Unnoticed {
  onMutantTested({ status, fileName, location, mutatorName, replacement, coveredBy }: Readonly<MutantResult>): void {
    if (status !== "Survived" && status !== "NoCoverage") return;
    const { line, column } = location.start;
    const text = replacement?.replaceAll(/\s+/g, " ").slice(0, 120) ?? "";
    const by = status === "Survived" ? `${coveredBy?.length ?? 0} tests` : "no test";
    process.stdout.write(`${relative("", fileName)}:${line}:${column} ${mutatorName} (${by}): ${text}\n`);
  }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.Reporter, "unnoticed", Unnoticed)];
