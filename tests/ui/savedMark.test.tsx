import { act, render, screen } from "@testing-library/react";
import { afterEach, expect, test } from "vitest";
import type { OpenState } from "../../src/app/storage/openFitting";
import { SavedMark } from "../../src/ui/shell/RailTools";
import { shelf } from "../../src/ui/kit/shelf/shelf";
import { savedWords } from "../../src/text/saved";

const opened = (saving: OpenState["saving"]): OpenState => ({ access: "writing", saving, entry: null });

afterEach(() => act(() => shelf.setState({ open: null })));

/** Whoever closes the page on seeing "saved" must lose nothing. Seen to fail when the mark followed a frame after the change. */
test("a change that is not kept yet is said within its own event, not a frame later", () => {
  render(<SavedMark />);
  const mark = () => screen.getByRole("link").textContent ?? "";
  act(() => shelf.setState({ open: opened({ kind: "saved", at: "2026-03-14T10:20:00.000Z" }) }));
  expect(mark()).toContain(savedWords.saved("").trim());
  act(() => shelf.setState({ open: opened({ kind: "saving" }) }));
  expect(mark()).toContain(savedWords.saving);
});
