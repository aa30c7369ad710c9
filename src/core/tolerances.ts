import { mm, type Millimetres } from "./units";

/**
 * Every tolerance of the core, with its unit, its reason and who may use it. A new one needs a physical fact behind it.
 */

/** How closely the simulated tape must read back what was measured when a section is solved. Tapes are read to 1 mm. */
export const sectionReadBack: Millimetres = mm(0.5);
