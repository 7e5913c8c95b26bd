import { Component, type ReactNode } from 'react';
import type { Build } from './build';
import { Action } from './shell/Action';
import styles from './shell/page.module.css';

interface Props {
  readonly build: Build;
  readonly children: ReactNode;
}

interface State {
  readonly failed: boolean;
  readonly reason: string;
}

/** Says what happened when a screen fails to draw, that the count is safe, and offers a way back. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { failed: false, reason: '' };

  static getDerivedStateFromError(thrown: unknown): State {
    return { failed: true, reason: thrown instanceof Error ? thrown.message : String(thrown) };
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    const { version, commit } = this.props.build;
    return (
      <main role="alert" className={styles.page}>
        <h1 className={styles.title}>This screen stopped working</h1>
        <p>What was counted is kept on this device. Reload to go on where you were.</p>
        <p>Reason: {this.state.reason || 'none given'}</p>
        <Action main onPress={() => window.location.reload()}>
          Reload
        </Action>
        <p>
          Version {version}, commit {commit}
        </p>
      </main>
    );
  }
}
