import { writeFileSync } from "node:fs";
import { resolve } from "node:path";
import { recordedAround } from "../tools/recordAround";
import { jobOnRecord, planOnRecord, recordedJobs, recordedPlans } from "../tools/record";

/** `npm run record`: writes down anew what plans and jobs say, for tests/laws/record.test.ts. Read the difference before it is kept. */
const write = (name: string, record: object) =>
  writeFileSync(resolve(import.meta.dirname, "../laws/record", name), `${JSON.stringify(record, null, 1)}\n`);

write("plans.json", Object.fromEntries(recordedPlans.map((seed) => [seed, planOnRecord(seed)])));
write("jobs.json", Object.fromEntries(Object.entries(recordedJobs).map(([title, job]) => [title, jobOnRecord(job)])));
write("around.json", Object.fromEntries(Object.entries(recordedAround).map(([title, said]) => [title, said()])));
