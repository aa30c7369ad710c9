import { describe, expect, test, vi } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { answering, type Beside } from "../../src/app/answers/answering";
import { answersFor } from "../../src/app/answers/answersFor";
import type { Answered, Asked } from "../../src/app/answers/slowQuestion";
import { apply, type Command } from "../../src/app/session/commands";
import { derivation } from "../../src/app/session/derived";
import { assert } from "../../src/core/result";
import type { Fitting, SettledFitting } from "../../src/document/fitting";
import { pieceToFile } from "../../src/document/pieceFile";
import { sampleBody, sampleForm } from "../support/sample";

const at = "2026-01-02T03:04:05.000Z";
const trial: Command = {
  does: "record",
  entry: {
    did: "trial",
    batting: "bonded batting",
    level: "waist",
    plies: 1,
    before: sampleForm("waistGirth"),
    after: sampleForm("waistGirth", 1.875),
    at,
  },
};
const derive = derivation();
const { planning } = derive(demoFitting);
assert(planning.kind === "planned", "the demo can be planned");
const pins = planning.plan.pieces
  .slice(0, 3)
  .map((piece): Command => ({ does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "", ""), at } }));
const underWay: Fitting = [trial, ...pins].reduce(apply, demoFitting);
const further = apply(underWay, { does: "read", name: "waistGirth", text: sampleBody("waistGirth", -2), at });

/** A worker as the page sees one: what goes in and out is copied, and it answers when it is told to. */
class Copying implements Beside {
  readonly asked: Asked[] = [];
  isGone = false;
  private readonly answer = answersFor(derivation());
  private readonly heard = new Map<string, (event: never) => void>();

  postMessage(asked: Asked): void {
    this.asked.push(structuredClone(asked));
  }
  addEventListener(kind: string, heard: (event: never) => void): void {
    this.heard.set(kind, heard);
  }
  terminate(): void {
    this.isGone = true;
  }
  work(): void {
    for (const asked of this.asked.splice(0)) this.tell("message", { data: structuredClone(this.answer(asked)) });
  }
  break(): void {
    this.tell("error", { preventDefault: () => {} });
  }
  private tell(kind: string, event: { readonly data: Answered } | { readonly preventDefault: () => void }): void {
    this.heard.get(kind)?.(event as never);
  }
}

describe("beside the page", () => {
  test("every answer is what the page itself would say, across the copying", async () => {
    const worker = new Copying();
    const answers = answering(() => worker);
    for (const fitting of [underWay, further]) {
      const derived = derive(fitting);
      const asked = (["learning", "thicknessHistory", "step"] as const).map((question) =>
        answers.ask(question, derived, fitting),
      );
      worker.work();
      expect(await Promise.all(asked)).toEqual([derived.learning(), derived.thicknessHistory(), derived.step()]);
      expect(derived.learning()).not.toBeNull();
    }
  });

  test("the same derivation is asked once, and the same fitting is sent once", () => {
    const worker = new Copying();
    const answers = answering(() => worker);
    const derived = derive(underWay);
    const first = answers.ask("learning", derived, underWay);
    expect(answers.ask("learning", derived, underWay)).toBe(first);
    void answers.ask("thicknessHistory", derived, underWay);
    expect(worker.asked.map(({ question, fitting }) => [question, fitting !== null])).toEqual([
      ["learning", true],
      ["thicknessHistory", false],
    ]);
  });

  test("a letter typed elsewhere, or one more reading, plans nothing anew that stays as it was", () => {
    const seen: SettledFitting[] = [];
    const answer = answersFor((fitting) => {
      seen.push(fitting);
      return derive(fitting);
    });
    answer({ number: 1, question: "learning", fitting: structuredClone(underWay) });
    answer({ number: 2, question: "learning", fitting: structuredClone(further) });
    expect(seen[1]?.body).toBe(seen[0]?.body);
    expect(seen[1]?.work).not.toBe(seen[0]?.work);
    expect(seen[1]?.work).toEqual(further.work);
  });
});

describe("on the page itself", () => {
  test("where there is no worker", async () => {
    const derived = derive(underWay);
    expect(await answering(() => null).ask("learning", derived, underWay)).toBe(derived.learning());
  });

  test("once the worker has failed: what it owed, and all that comes later", async () => {
    const worker = new Copying();
    const start = vi.fn(() => worker);
    const answers = answering(start);
    const [now, later] = [derive(underWay), derivation()(further)];
    const owed = answers.ask("learning", now, underWay);
    worker.break();
    expect(await owed).toBe(now.learning());
    expect(worker.isGone).toBe(true);
    expect(await answers.ask("learning", later, further)).toBe(later.learning());
    expect(start).toHaveBeenCalledTimes(1);
    expect(worker.asked).toHaveLength(1);
  });
});
