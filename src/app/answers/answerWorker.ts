import { derivation } from "../session/derived";
import { answersFor } from "./answersFor";
import type { Asked } from "./slowQuestion";

// Runs beside the page. What goes wrong here reaches the page as an error of its worker, and the page then answers itself.
const answer = answersFor(derivation());
addEventListener("message", ({ data }: MessageEvent<Asked>) => postMessage(answer(data)));
