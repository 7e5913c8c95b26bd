import type { Clock } from '#clock';
import { watchClickedFocus } from './clickedFocus';
import { eventAge } from './eventAge';
import { controlKeeps } from './keptKeys';
import type { PressInput } from './pressInput';

/** Some remotes send keys that have a name and no code. */
function codeOf(event: KeyboardEvent): string {
  return event.code === '' ? event.key : event.code;
}

/**
 * Hands a window's key events to `feed`, timed when they happened, and its losing the keyboard as a
 * blur. Keys with Ctrl, Alt or Meta, and keys a focused control keeps, are left alone. A key whose
 * down was prevented has its key-up prevented too, since some browsers click on that.
 * Returns what stops it.
 */
export function listenForKeys(
  window: Window,
  clock: Clock,
  feed: (input: PressInput) => boolean,
): () => void {
  const page = window.document;
  const prevented = new Set<string>();
  const clicked = watchClickedFocus(page);

  function ownedElsewhere(event: KeyboardEvent): boolean {
    if (event.defaultPrevented || event.isComposing) return true;
    if (event.ctrlKey || event.altKey || event.metaKey) return true;
    const focused = page.activeElement;
    return focused !== null && controlKeeps(focused, codeOf(event), clicked.has(focused));
  }

  function inputOf(type: 'down' | 'up', event: KeyboardEvent): PressInput {
    const at = clock.now() - eventAge(event);
    return { type, code: codeOf(event), repeat: event.repeat, at };
  }

  function onKeyDown(event: KeyboardEvent): void {
    const code = codeOf(event);
    if (ownedElsewhere(event) || !feed(inputOf('down', event))) {
      prevented.delete(code);
      return;
    }
    prevented.add(code);
    event.preventDefault();
  }

  // Every key-up is handed on, wherever the focus is by then: a hold must end.
  function onKeyUp(event: KeyboardEvent): void {
    feed(inputOf('up', event));
    if (prevented.delete(codeOf(event))) event.preventDefault();
  }

  function onBlur(): void {
    prevented.clear();
    feed({ type: 'blur', at: clock.now() });
  }

  function onVisibility(): void {
    if (page.visibilityState === 'hidden') onBlur();
  }

  window.addEventListener('keydown', onKeyDown);
  window.addEventListener('keyup', onKeyUp);
  window.addEventListener('blur', onBlur);
  window.addEventListener('pagehide', onBlur);
  page.addEventListener('visibilitychange', onVisibility);
  return () => {
    clicked.stop();
    window.removeEventListener('keydown', onKeyDown);
    window.removeEventListener('keyup', onKeyUp);
    window.removeEventListener('blur', onBlur);
    window.removeEventListener('pagehide', onBlur);
    page.removeEventListener('visibilitychange', onVisibility);
  };
}
