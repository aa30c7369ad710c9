import { z } from "zod/mini";
import { levelNames } from "../core/body/vocabulary";
import type { Frozen } from "./frozen";
import { pieceFileSchema, lengthMm } from "./pieceFileSchema";
import { seamShiftSchema, shortfallSchema } from "./planFile";

/** What the command `next` prints: the one next step of a fitting, and what is known of the batting and of the rest. */
const layerSchema = z.strictObject({ batting: z.string(), thicknessMm: lengthMm, lowMm: lengthMm, highMm: lengthMm });
const predictedSchema = z.strictObject({ valueMm: z.number(), lowMm: z.number(), highMm: z.number() });
const byMeasurement = z.record(z.string(), z.number());

export const stepFileSchema = z
  .strictObject({
    version: z.literal(1),
    step: z.strictObject({
      part: z.enum(["padding", "cover", "waist", "arm", "after"]),
      do: z.string().check(z.meta({ description: "What is next." })),
      say: z.string(),
      minutes: z.number().check(z.minimum(0)),
      piece: z.exactOptional(pieceFileSchema),
      levels: z.array(z.enum(levelNames)),
      expectedMm: byMeasurement.check(
        z.meta({ description: "What the tape should read, under the keys of the measurements." }),
      ),
      toleranceMm: byMeasurement.check(z.meta({ description: "Within how much of that it is on target." })),
      record: z.exactOptional(z.looseObject({ did: z.string() })).check(
        z.meta({
          description:
            "The entry to add to the fitting's work once the step is done; null stands where a measurement goes, a number in the fitting's unit. Only `done` has none.",
        }),
      ),
    }),
    layer: layerSchema.check(
      z.meta({ description: "One layer of the batting at hand, alone under a snug tape; nine in ten." }),
    ),
    layers: z.array(layerSchema),
    rest: z.strictObject({
      pieces: z.array(pieceFileSchema),
      shortfalls: z.array(shortfallSchema),
      seamShifts: z.array(seamShiftSchema),
      predicted: z
        .record(
          z.enum(levelNames),
          z.strictObject({ girthMm: predictedSchema, frontArcMm: predictedSchema, backArcMm: predictedSchema }),
        )
        .check(
          z.meta({ description: "What the finished padding will read, with the side seam where seamShifts puts it." }),
        ),
    }),
  })
  .check(z.meta({ title: "Next step", description: "The one next step of a fitting. All lengths in millimeters." }));
export type StepFile = Frozen<z.infer<typeof stepFileSchema>>;
