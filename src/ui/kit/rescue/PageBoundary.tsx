import { Component, type ReactNode, useEffect } from "react";
import type { SettledFitting } from "../../../document/fitting";
import { type Page, usePage } from "../page";
import { useFitting } from "../useStore";
import { FailedPage, noteFailure, noteShown } from "./FailedPage";

interface PageBoundaryProps {
  /**
   * The place that `children` is the page of. It is handed in with the page: asked for here, it would be another one a
   * moment before the page is.
   */
  readonly page: Page;
  readonly children: ReactNode;
}

/** Round every page: where one fails, what happened stands in its place, and the other fittings stay in reach. */
export function PageBoundary({ page, children }: PageBoundaryProps) {
  const fitting = useFitting();
  return (
    <Boundary
      causes={[page, fitting]}
      onFailure={noteFailure}
      instead={({ error, retry }) => <FailedPage error={error} onRetry={retry} />}
    >
      {children}
      <Shown page={page} fitting={fitting} />
    </Boundary>
  );
}

/** Round everything, for a failure of the frame itself. */
export function ToolBoundary({ children }: { readonly children: ReactNode }) {
  const page = usePage();
  const fitting = useFitting();
  return (
    <Boundary
      causes={[page, fitting]}
      onFailure={noteFailure}
      instead={({ error, retry }) => (
        <main className="place">
          <FailedPage error={error} onRetry={retry} />
        </main>
      )}
    >
      {children}
    </Boundary>
  );
}

/** Is only ever on the screen beside a page that did not fail. */
function Shown({ page, fitting }: { readonly page: Page; readonly fitting: SettledFitting }) {
  // biome-ignore lint/correctness/useExhaustiveDependencies: another place or fitting is shown anew.
  useEffect(noteShown, [page, fitting]);
  return null;
}

/** Round a small part beside the work, which stays away when it fails. */
export function PartBoundary({
  children,
  instead = null,
}: {
  readonly children: ReactNode;
  readonly instead?: ReactNode;
}) {
  const fitting = useFitting();
  return (
    <Boundary causes={[fitting]} instead={() => instead}>
      {children}
    </Boundary>
  );
}

interface BoundaryProps {
  /** What is shown instead once something inside has failed; `retry` tries the same anew. */
  readonly instead: (failure: Failure) => ReactNode;
  /** Whatever a failure may hang on: when one of these is another, what is inside is tried anew. */
  readonly causes: readonly unknown[];
  readonly onFailure?: () => void;
  readonly children: ReactNode;
}

interface Failure {
  readonly error: unknown;
  readonly retry: () => void;
}

interface BoundaryState {
  readonly failed: { readonly error: unknown } | null;
}

/** Holds a failure of what is inside it, so that everything outside stays on the screen and can be used. */
export class Boundary extends Component<BoundaryProps, BoundaryState> {
  override state: BoundaryState = { failed: null };
  private failedFor: readonly unknown[] = [];

  static getDerivedStateFromError(error: unknown): BoundaryState {
    return { failed: { error } };
  }

  override componentDidCatch(): void {
    this.failedFor = this.props.causes;
    this.props.onFailure?.();
  }

  override componentDidUpdate(): void {
    const isOther = this.failedFor.some((cause, i) => cause !== this.props.causes[i]);
    if (this.state.failed !== null && isOther) this.retry();
  }

  private readonly retry = (): void => {
    this.failedFor = [];
    this.setState({ failed: null });
  };

  override render(): ReactNode {
    const { failed } = this.state;
    return failed === null ? this.props.children : this.props.instead({ error: failed.error, retry: this.retry });
  }
}
