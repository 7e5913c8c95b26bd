import { useEffect } from 'react';

/** What the keys do to the picture. */
export interface ScrubMoves {
  /** Whole degrees on, below 0 back. */
  readonly by: (degrees: number) => void;
  readonly stopAfter: () => void;
  readonly stopBefore: () => void;
  readonly home: () => void;
}

/** Arrows, page keys (which most pedals send) and Home move the picture, wherever the focus is. */
export function useScrubKeys(moves: ScrubMoves): void {
  useEffect(() => {
    function press(key: KeyboardEvent): void {
      if (key.altKey || key.ctrlKey || key.metaKey) return;
      const move = moveOf(moves, key.key);
      if (move === undefined) return;
      key.preventDefault();
      move();
    }
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [moves]);
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
