import { Component, type ReactNode } from 'react';
import { Act } from '../parts/act.tsx';
import { Failure } from '../parts/empty.tsx';

/** A page that breaks says so and leaves the rest standing. What was typed is in the document already. */
export class TroubleCatcher extends Component<{ readonly children: ReactNode }, { said: string | null }> {
  override state = { said: null as string | null };

  static getDerivedStateFromError(error: unknown): { said: string } {
    return { said: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    if (this.state.said === null) return this.props.children;
    return (
      <Failure
        where="This page"
        what="This page stopped: a mistake of ours, not of yours."
        lost={`Everything typed so far is kept. What it said: ${this.state.said}`}
      >
        <Act onPress={() => location.reload()}>Open it again</Act>
      </Failure>
    );
  }
}
