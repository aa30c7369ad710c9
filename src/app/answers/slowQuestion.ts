import type { SettledFitting } from "../../document/fitting";
import type { Derived } from "../session/derived";

/** The questions about a fitting whose answers take a tablet some time, because they plan or learn. */
export type SlowQuestion = "learning" | "thicknessHistory" | "step";

export type SlowAnswer<Question extends SlowQuestion> = ReturnType<Derived[Question]>;

/** What is sent to the worker: the fitting only where it is another one than that of the question before. */
export interface Asked {
  readonly number: number;
  readonly question: SlowQuestion;
  readonly fitting: SettledFitting | null;
}

/** What comes back from it. */
export interface Answered {
  readonly number: number;
  readonly answer: SlowAnswer<SlowQuestion>;
}
