import { render } from "@testing-library/react";
import type { ReactNode } from "react";
import type { FittingStore } from "../../src/app/session/store";
import { Announcer } from "../../src/ui/kit/Announcer";
import { StoreProvider } from "../../src/ui/kit/useStore";

/** A part of the workroom with the one voice that says what was done, and what that voice says now. */
export function renderedWithVoice(store: FittingStore, part: ReactNode) {
  const { container } = render(
    <StoreProvider store={store}>
      <Announcer>{part}</Announcer>
    </StoreProvider>,
  );
  const heard = (): string =>
    (container.querySelector("[aria-live=polite]")?.textContent ?? "").replaceAll("\u00a0", " ").trim();
  return { container, heard };
}
