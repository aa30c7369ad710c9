import { measurementNames } from "../core/body/vocabulary";
import { fittingSchema } from "../document/fittingSchema";
import { jsonSchema } from "../document/jsonSchema";
import { planFileSchema } from "../document/planFile";
import { stepFileSchema } from "../document/stepFile";
import { measurementTexts } from "../text/measurements";

/**
 * The JSON Schemas of our two file formats under the names they are published by, as the text of each file. Beside the
 * key of each measurement stands what it is, in the words of the screen.
 */
export const publishedSchemas: { readonly [file: string]: string } = {
  "fitting.schema.json": schemaText(withMeasurements(jsonSchema(fittingSchema, "input"))),
  "plan.schema.json": schemaText(jsonSchema(planFileSchema)),
  "next.schema.json": schemaText(jsonSchema(stepFileSchema)),
};

function schemaText(schema: object): string {
  return `${JSON.stringify(schema, null, 2)}\n`;
}

/** Every reference to a length under the key of a measurement gets that measurement's description. */
function withMeasurements(schema: object): object {
  const known = new Set<string>(measurementNames);
  return JSON.parse(JSON.stringify(schema), (_, value: unknown) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, known.has(key) ? described(key, inner as object) : inner]),
    );
  }) as object;
}

function described(key: string, length: object): object {
  const { what } = measurementTexts[key as keyof typeof measurementTexts];
  return { ...length, description: what };
}
