import { Component, type ReactNode } from "react";

interface BoundaryProps {
  /** What is shown instead once something inside has failed; `retry` tries the same anew. */
  readonly instead: (failure: Failure) => ReactNode;
  /** Whatever a failure may hang on: when one of these is another, what is inside is tried anew. */
  readonly causes: readonly unknown[];
  readonly onFailure?: () => void;
  readonly children: ReactNode;
}

export interface Failure {
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
