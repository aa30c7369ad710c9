import { longestStepNote } from "./fittingLimits";
import type { Frozen } from "./frozen";
import { z } from "zod/mini";

/** What was written to steps of the work, for a class: by the step, as `pin/waist-wrap` or `baste`. */
export const stepNotesSchema = z
  .record(z.string().check(z.minLength(1), z.maxLength(240)), z.string().check(z.maxLength(longestStepNote)))
  .check(
    z.meta({
      description:
        'The teacher\'s own notes to steps of the work. A key is the step, such as "trial" or "pin/waist-wrap"; a step that comes again has its number behind it, such as "read-all/2".',
    }),
  );
export type StepNotes = Frozen<z.infer<typeof stepNotesSchema>>;
