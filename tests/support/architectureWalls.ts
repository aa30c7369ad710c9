import { fileBudgets, functionBudgets } from "./architectureBudgets";
import { barrels, layersFilled, sayingNames, testsAreRun, topLevel, workerAddresses } from "./architectureNames";
import type { Wall } from "./architectureProject";
import { clockAndChance, compilerComments, readonlyTypes } from "./architecturePurity";
import { lockWithoutHosts, ownWordsOnly, pagePolicy } from "./architectureTexts";
import { bareTolerances } from "./architectureTolerances";

/** The walls no tool keeps for us, by the name their planted violations are filed under. */
export const walls = {
  layersFilled,
  workerAddresses,
  clockAndChance,
  compilerComments,
  readonlyTypes,
  fileBudgets,
  functionBudgets,
  bareTolerances,
  barrels,
  sayingNames,
  topLevel,
  testsAreRun,
  ownWordsOnly,
  lockWithoutHosts,
  pagePolicy,
} as const satisfies Readonly<Record<string, Wall>>;

export type WallName = keyof typeof walls;
