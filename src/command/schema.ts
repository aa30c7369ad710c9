import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { publishedSchemas } from "./publishedSchemas";

/** Writes the JSON Schemas of the fitting file and the plan file to the folder that is published. */
const folder = resolve(import.meta.dirname, "../../public");
for (const [file, text] of Object.entries(publishedSchemas)) writeFileSync(resolve(folder, file), text);
