import { fireEvent, screen, waitFor } from "@testing-library/react";
import { expect, test } from "vitest";
import { demoFitting } from "../../src/app/session/demoFitting";
import { derivation } from "../../src/app/session/derived";
import { fittingStore } from "../../src/app/session/store";
import { assert } from "../../src/core/result";
import { pieceToFile } from "../../src/document/pieceFile";
import { FinishingPage } from "../../src/ui/pages/finishing/FinishingPage";
import { sampleBody } from "../support/sample";
import { renderedWithVoice } from "./withVoice";

/** What is heard by whoever does not look: the one voice of the workroom, and what a field is described by. */
const at = "2026-01-02T03:04:05.000Z";

/** A waist that the padding leaves short, as it would be typed. */
const short = sampleBody("waistGirth", -1.875);

function shown() {
  const store = fittingStore(demoFitting);
  const { planning } = derivation()(demoFitting);
  assert(planning.kind === "planned", "the demo can be planned");
  for (const piece of planning.plan.pieces.slice(0, 2))
    store.dispatch({ does: "record", entry: { did: "pinned", piece: pieceToFile(piece, "a piece", "its place"), at } });
  const { heard } = renderedWithVoice(store, <FinishingPage />);
  fireEvent.click(screen.getByRole("tab", { name: "waist" }));
  const field = screen.getByRole<HTMLInputElement>("textbox", { name: /waist, all around/ });
  const type = (text: string) => fireEvent.change(field, { target: { value: text } });
  return { store, field, heard, type };
}

test("a reading is said when it is kept, with what is left to go, and not at its letters", () => {
  const { field, heard, type } = shown();
  type("3");
  type(short.slice(0, 2));
  type(short);
  expect(heard()).toBe("");
  fireEvent.keyDown(field, { key: "Enter" });
  expect(heard()).toBe(`Waist, all around ${short} in: 1 7/8 in to go all around.`);
});

test("a text that is no length is said to be none, by Enter and by the pad's own patch", async () => {
  const { field, heard, type } = shown();
  type("abc");
  fireEvent.keyDown(field, { key: "Enter" });
  const told = heard();
  expect(told).toContain("abc");
  const keep = screen.getByRole("button", { name: "Save the measurement" });
  await waitFor(() => expect(keep).toBeEnabled());
  fireEvent.click(keep);
  expect(heard()).toBe(`${told} ${told}`);
});

test("the field of a reading is described by what is left to go", () => {
  const { field, type } = shown();
  type(short);
  const described = (field.getAttribute("aria-describedby") ?? "").split(" ");
  const words = described.map((id) => document.getElementById(id)?.textContent ?? "").join(" ");
  expect(words.replaceAll("\u00a0", " ")).toContain("1 7/8 in to go all around");
});
