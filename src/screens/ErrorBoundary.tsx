import { Component, type ReactNode } from 'react';
import type { Build } from './build';
import { crashWords as words } from './crashWords';
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
      <main className={styles.page}>
        <h1 className={styles.title}>{words.title}</h1>
        <div role="alert">
          <p>{words.kept}</p>
          <p>{words.reason(this.state.reason)}</p>
        </div>
        <Action main onPress={() => window.location.reload()}>
          {words.reload}
        </Action>
        <p>{words.build(version, commit)}</p>
      </main>
    );
  }
}
