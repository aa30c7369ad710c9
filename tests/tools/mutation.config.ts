import { BaseSequencer, type TestSpecification } from "vitest/node";
import { defineConfig } from "vitest/config";

/** Quick tests that look at everything stand first: the run of a changed line ends with the first test that fails. */
class QuickFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const order = ["laws/record", "core/", "document/", "laws/", "outside/"];
    const place = ({ moduleId }: TestSpecification) => order.findIndex((part) => moduleId.includes(`/tests/${part}`));
    return [...files].sort((a, b) => place(a) - place(b));
  }
}

/** Which tests judge the changed lines of `npm run study:mutation`: all that the core and the document have, without the slowest. */
export default defineConfig({
  test: {
    environment: "node",
    // Modules that files share would keep the changes of the file that loaded them first.
    isolate: true,
    testTimeout: 60_000,
    sequence: { sequencer: QuickFirst },
    include: ["core", "document", "laws", "outside"].map((folder) => `tests/${folder}/**/*.test.ts`),
    exclude: [
      // How long something takes says nothing of a changed line, and is longer in code that counts its own lines.
      "core/cover/coverSpeed",
      // What these find out at length, the record notices at once.
      "laws/above",
      "laws/loop",
      "laws/plan",
      "laws/numbers",
      "outside/realShapes",
      "outside/measuringGains",
      "outside/steiner",
      "outside/tautRing",
      "outside/commonPractice",
      "outside/trueCover",
      "outside/trueSurface",
    ].map((name) => `tests/${name}.test.ts`),
  },
});
