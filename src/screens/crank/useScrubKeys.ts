import { useEffect } from 'react';

/** What the keys do to the picture. */
export interface ScrubMoves {
  /** Whole degrees on, below 0 back. */
  readonly by: (degrees: number) => void;
  readonly stopAfter: () => void;
  readonly stopBefore: () => void;
  readonly home: () => void;
}

/**
 * Arrows, page keys, Home and the pedal move the picture, wherever the focus is. A pedal that sends
 * what presses a button leaves a button that has the focus alone.
 */
export function useScrubKeys(moves: ScrubMoves, pedal: readonly string[]): void {
  useEffect(() => {
    function press(key: KeyboardEvent): void {
      if (key.altKey || key.ctrlKey || key.metaKey) return;
      const move = moveOf(moves, key.key) ?? (byPedal(key, pedal) ? moves.stopAfter : undefined);
      if (move === undefined) return;
      key.preventDefault();
      move();
    }
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [moves, pedal]);
}

function moveOf(moves: ScrubMoves, key: string): (() => void) | undefined {
  switch (key) {
    case 'ArrowRight':
      return () => moves.by(1);
    case 'ArrowLeft':
      return () => moves.by(-1);
    case 'PageDown':
      return moves.stopAfter;
    case 'PageUp':
      return moves.stopBefore;
    case 'Home':
      return moves.home;
    default:
      return undefined;
  }
}

function byPedal(key: KeyboardEvent, pedal: readonly string[]): boolean {
  if (key.repeat || !pedal.includes(key.code)) return false;
  const presses = key.key === ' ' || key.key === 'Enter';
  return !(presses && key.target instanceof Element && key.target.closest('button, a') !== null);
}
