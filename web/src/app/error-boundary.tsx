import { Component, type ReactNode } from "react";
import { ErrorScreen } from "./error-screen.js";

interface Props {
  readonly children: ReactNode;
}

/** Catches what a screen throws, so that export still works. */
export class ErrorBoundary extends Component<Props, { readonly error: unknown; readonly failed: boolean }> {
  override state = { error: undefined, failed: false };

  static getDerivedStateFromError(error: unknown) {
    return { error, failed: true };
  }

  override render(): ReactNode {
    return this.state.failed ? <ErrorScreen error={this.state.error} /> : this.props.children;
  }
}
