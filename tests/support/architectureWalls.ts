import { fileBudgets, functionBudgets } from "./architectureBudgets";
import {
  coreFolderOrder,
  folderRings,
  fileRings,
  importDirection,
  layersFilled,
  packages,
} from "./architectureImports";
import { barrels, sayingNames, testsAreRun, topLevel } from "./architectureNames";
import type { Wall } from "./architectureProject";
import { clockAndChance, compilerComments, readonlyTypes } from "./architecturePurity";
import { lockWithoutHosts, ownWordsOnly, pagePolicy } from "./architectureTexts";
import { bareTolerances } from "./architectureTolerances";

/** Every wall of the house, by the name its planted violations are filed under. */
export const walls = {
  layersFilled,
  importDirection,
  packages,
  coreFolderOrder,
  fileRings,
  folderRings,
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
