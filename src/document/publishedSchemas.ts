import { z } from "./strictZod";
import { fittingSchema } from "./fitting";
import { planFileSchema } from "./planFile";

/** The JSON Schemas of our two file formats under the names they are published by, as the text of each file. */
export const publishedSchemas: { readonly [file: string]: string } = {
  "fitting.schema.json": schemaText(z.toJSONSchema(fittingSchema, { io: "input" })),
  "plan.schema.json": schemaText(z.toJSONSchema(planFileSchema)),
};

function schemaText(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}
