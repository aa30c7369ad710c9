import { z } from "zod/mini";

/** A schema of ours as a JSON Schema of what a file holds before it is read, or of what is written. */
export const jsonSchema = (schema: z.core.$ZodType, io: "input" | "output" = "output"): object =>
  z.toJSONSchema(schema, { io });
