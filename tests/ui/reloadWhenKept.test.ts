import { expect, test } from "vitest";
import type { OpenState } from "../../src/app/storage/openFitting";
import { notSaved } from "../../src/app/storage/fittingOutcome";
import { reloadWhenKept, shelf } from "../../src/ui/kit/shelf/shelf";

const saving = (state: OpenState["saving"]): void =>
  shelf.setState({ open: { access: "writing", saving: state, entry: null } });

test("a newer release is taken at once when nothing waits, else only after the save", () => {
  let reloads = 0;
  const reload = () => {
    reloads += 1;
  };
  shelf.setState({ open: null });
  reloadWhenKept(reload);
  expect(reloads).toBe(1);
  saving({ kind: "saving" });
  reloadWhenKept(reload);
  saving({ kind: "notSaved", refusal: notSaved("noRoom", "full") });
  expect(reloads).toBe(1);
  saving({ kind: "saved", at: "2026-01-01T00:00:00.000Z" });
  expect(reloads).toBe(2);
  saving({ kind: "saving" });
  saving({ kind: "saved", at: "2026-01-01T00:00:01.000Z" });
  expect(reloads).toBe(2);
});
