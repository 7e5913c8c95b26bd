import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { KeyBinding, Keymap, LearnState } from '#pressing';
import { bindKeys, bindLearning, defaultKeymap, withListen } from '#pressing';
import type { FakeClock } from '../fakes/clock';
import { fakeClock } from '../fakes/clock';
import { pressText } from './run';

const keymap: Keymap = withListen(defaultKeymap, 'KeyL');

let clock: FakeClock;
let binding: KeyBinding;
let presses: string[];
let cues: string[];
let active: boolean;

beforeEach(() => {
  clock = fakeClock();
  presses = [];
  cues = [];
  active = true;
  // The fake clock says when an event happened, so the browser's own event times are held still.
  vi.spyOn(performance, 'now').mockReturnValue(0);
  binding = bindKeys({
    window,
    clock,
    context: () => ({ keymap, active, withinStep: (value) => value <= 1 }),
    onPress: (press) => presses.push(pressText(press)),
    onCue: (cue) => cues.push(cue.kind === 'hold' ? cue.reached : cue.kind),
  });
});

afterEach(() => {
  binding.stop();
  vi.restoreAllMocks();
  document.body.innerHTML = '';
});

/** Sends one key event where the focus is; returns whether its own action was prevented. */
function send(type: 'keydown' | 'keyup', code: string, more: KeyboardEventInit = {}): boolean {
  const event = new KeyboardEvent(type, { code, bubbles: true, cancelable: true, ...more });
  (document.activeElement ?? document.body).dispatchEvent(event);
  return event.defaultPrevented;
}

/** Presses and lets go, and leaves time for the next press. */
function press(code: string, heldMs = 100): boolean {
  const prevented = send('keydown', code);
  clock.advance(heldMs);
  send('keyup', code);
  clock.advance(1000);
  return prevented;
}

function put<T extends Element>(html: string): T {
  document.body.insertAdjacentHTML('beforeend', html);
  const element = document.body.lastElementChild;
  if (element === null) throw new Error('nothing was put on the page');
  return element as unknown as T;
}

/** Focuses as Tab does, or as a click does; either is `:focus-visible` once a key goes down. */
function focus(element: HTMLElement, by: 'keyboard' | 'click'): void {
  const matches = element.matches.bind(element);
  Object.defineProperty(element, 'matches', {
    configurable: true,
    value: (selector: string) => selector === ':focus-visible' || matches(selector),
  });
  if (by === 'click') element.dispatchEvent(new Event('pointerdown', { bubbles: true }));
  else send('keydown', 'Tab');
  element.focus();
  expect(document.activeElement).toBe(element);
}

describe('keys of the window', () => {
  test('a key presses, and its own action is prevented, down and up', () => {
    expect(send('keydown', 'Space')).toBe(true);
    expect(send('keyup', 'Space')).toBe(true);
    expect(presses).toEqual(['step']);
  });

  test('a hold gives its tones by the clock and its press on letting go', () => {
    send('keydown', 'PageDown');
    clock.advance(599);
    expect(cues).toEqual([]);
    clock.advance(1);
    expect(cues).toEqual(['next stage']);
    clock.advance(900);
    expect(cues).toEqual(['next stage', 'take back']);
    expect(presses).toEqual([]);
    send('keyup', 'PageDown');
    expect(presses).toEqual(['take back']);
    expect(cues).toEqual(['next stage', 'take back', 'hold ended']);
    expect(clock.waiting()).toBe(0);
  });

  test('a hold on a busy page is as long as the key was down', () => {
    send('keydown', 'PageDown');
    clock.advance(650);
    // Told 100 ms late.
    vi.spyOn(performance, 'now').mockReturnValue(100);
    const event = new KeyboardEvent('keyup', { code: 'PageDown', bubbles: true });
    Object.defineProperty(event, 'timeStamp', { value: 0.001 });
    document.body.dispatchEvent(event);
    expect(presses).toEqual(['step']);
  });

  test('a waiting digit is given by the clock', () => {
    send('keydown', 'Numpad8');
    clock.advance(699);
    expect(presses).toEqual([]);
    clock.advance(1);
    expect(presses).toEqual(['number 8']);
  });

  test.each(['ctrlKey', 'altKey', 'metaKey'])(
    'with %s a key is left to the browser',
    (modifier) => {
      expect(send('keydown', 'F5', { [modifier]: true })).toBe(false);
      expect(send('keydown', 'Space', { [modifier]: true })).toBe(false);
      expect(presses).toEqual([]);
    },
  );

  test('a modifier pressed during a hold does not keep it from ending', () => {
    send('keydown', 'PageDown');
    clock.advance(700);
    send('keyup', 'PageDown', { ctrlKey: true });
    expect(presses).toEqual(['next stage']);
  });

  test('F5 does not reload, though it means nothing', () => {
    expect(press('F5')).toBe(true);
    expect(presses).toEqual([]);
  });

  test('a key without a code is known by its name', () => {
    expect(send('keydown', '', { key: 'Enter' })).toBe(true);
    expect(presses).toEqual(['step']);
  });

  test('what another part of the page has handled is left alone', () => {
    const field = put<HTMLElement>('<div tabindex="0"></div>');
    field.addEventListener('keydown', (event) => event.preventDefault());
    field.focus();
    press('Space');
    expect(presses).toEqual([]);
  });

  test('switched off, nothing is prevented and nothing counts', () => {
    active = false;
    expect(press('Space')).toBe(false);
    expect(press('PageDown')).toBe(false);
    expect(presses).toEqual([]);
    active = true;
    press('Space');
    expect(presses).toEqual(['step']);
  });

  test('another device goes the same road', () => {
    expect(binding.feed({ type: 'down', code: 'Space', repeat: false, at: clock.now() })).toBe(
      true,
    );
    expect(presses).toEqual(['step']);
  });

  test('stopped, it lets go of the window and of the clock', () => {
    send('keydown', 'PageDown');
    send('keydown', 'KeyL');
    binding.stop();
    expect(presses).toEqual(['listen on', 'listen off']);
    expect(clock.waiting()).toBe(0);
    expect(press('Space')).toBe(false);
    expect(presses).toEqual(['listen on', 'listen off']);
  });
});

describe('losing the keyboard', () => {
  function hide(): void {
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    document.dispatchEvent(new Event('visibilitychange'));
  }

  test.each([
    ['the window loses the focus', () => window.dispatchEvent(new Event('blur'))],
    ['the page is hidden', hide],
    ['the page is left', () => window.dispatchEvent(new Event('pagehide'))],
  ])('%s: what is held or waiting is cancelled, and the next press works', (_, lose) => {
    send('keydown', 'KeyL');
    send('keydown', 'Numpad8');
    send('keydown', 'PageDown');
    expect(presses).toEqual(['listen on', 'number 8']);
    clock.advance(700);
    lose();
    expect(presses).toEqual(['listen on', 'number 8', 'listen off']);
    expect(cues).toEqual(['next stage', 'hold ended']);
    expect(clock.waiting()).toBe(0);
    clock.advance(5000);
    press('PageDown');
    expect(presses).toEqual(['listen on', 'number 8', 'listen off', 'step']);
  });

  test('a page that is shown again cancels nothing', () => {
    send('keydown', 'PageDown');
    clock.advance(700);
    document.dispatchEvent(new Event('visibilitychange'));
    send('keyup', 'PageDown');
    expect(presses).toEqual(['next stage']);
  });
});

describe('the focus', () => {
  test.each([
    '<button>Torqued</button>',
    '<a href="#jobs">Jobs</a>',
    '<input type="checkbox">',
    '<div role="button" tabindex="0">More</div>',
  ])('%s reached by Tab keeps Space and Enter, and no other key', (html) => {
    focus(put(html), 'keyboard');
    expect([press('Space'), press('Enter'), press('NumpadEnter')]).toEqual([false, false, false]);
    expect(send('keyup', 'Space')).toBe(false);
    expect(presses).toEqual([]);
    expect([press('NumpadAdd'), press('PageDown')]).toEqual([true, true]);
    expect(presses).toEqual(['seat and accept', 'step']);
  });

  test('a button that was clicked keeps nothing', () => {
    focus(put('<button>Torqued</button>'), 'click');
    expect(press('Space')).toBe(true);
    expect(presses).toEqual(['step']);
  });

  test('clicked, left by Tab and reached by Tab again, it keeps Space', () => {
    const button = put<HTMLButtonElement>('<button>Torqued</button>');
    focus(button, 'click');
    focus(put('<button>Next</button>'), 'keyboard');
    focus(button, 'keyboard');
    expect(press('Space')).toBe(false);
    expect(presses).toEqual([]);
  });

  test('reached by Tab and then clicked, it keeps nothing', () => {
    const button = put<HTMLButtonElement>('<button>Torqued</button>');
    focus(button, 'keyboard');
    focus(button, 'click');
    expect(press('Space')).toBe(true);
    expect(presses).toEqual(['step']);
  });

  test('a clicked button still keeps nothing when the window gets the keyboard back', () => {
    const button = put<HTMLButtonElement>('<button>Torqued</button>');
    focus(button, 'click');
    press('PageDown');
    button.dispatchEvent(new FocusEvent('focusin', { bubbles: true }));
    press('Space');
    expect(presses).toEqual(['step', 'step']);
  });

  test('a slider reached by Tab keeps its arrow and page keys too', () => {
    focus(put('<input type="range">'), 'keyboard');
    expect([press('ArrowRight'), press('PageDown')]).toEqual([false, false]);
    expect(press('KeyH')).toBe(true);
    expect(presses).toEqual(['half']);
  });

  test('a list reached by Tab keeps every key', () => {
    focus(put('<select><option>Half</option></select>'), 'keyboard');
    expect([press('KeyH'), press('Space'), press('ArrowLeft')]).toEqual([false, false, false]);
    expect(presses).toEqual([]);
  });

  test.each(['<input>', '<input type="number">', '<textarea></textarea>'])(
    'in %s nothing is prevented and nothing counts, however it was reached',
    (html) => {
      focus(put(html), 'click');
      const codes = ['Space', 'Enter', 'Numpad4', 'KeyH', 'PageDown', 'F5', 'Backspace'];
      expect(codes.map((code) => press(code))).toEqual(codes.map(() => false));
      expect(presses).toEqual([]);
    },
  );

  test('a hold that ends in a text field ends', () => {
    send('keydown', 'PageDown');
    clock.advance(700);
    focus(put('<input>'), 'click');
    send('keyup', 'PageDown');
    expect(presses).toEqual(['next stage']);
  });
});

describe('dialogs', () => {
  test('under a dialog the keys are off; a hold it interrupts does nothing', () => {
    send('keydown', 'PageDown');
    clock.advance(300);
    put('<dialog open><button>Yes</button></dialog>');
    clock.advance(400);
    send('keyup', 'PageDown');
    expect(press('Space')).toBe(false);
    expect(presses).toEqual([]);
    expect(clock.waiting()).toBe(0);
  });

  test('once it has closed the keys work without a click, though the focus went back to a button', () => {
    const opener = put<HTMLButtonElement>('<button>About</button>');
    const dialog = put<HTMLDialogElement>('<dialog open><button>Close</button></dialog>');
    dialog.removeAttribute('open');
    focus(opener, 'keyboard');
    dialog.dispatchEvent(new Event('close'));
    expect(document.activeElement).toBe(document.body);
    expect(press('Space')).toBe(true);
    expect(presses).toEqual(['step']);
  });

  test('a dialog closing over another leaves the focus in it', () => {
    put('<dialog open></dialog>');
    const button = put<HTMLButtonElement>('<button>Yes</button>');
    const upper = put<HTMLDialogElement>('<dialog></dialog>');
    button.focus();
    upper.dispatchEvent(new Event('close'));
    expect(document.activeElement).toBe(button);
  });

  test('a text field that gets the focus back keeps it', () => {
    const field = put<HTMLInputElement>('<input>');
    const dialog = put<HTMLDialogElement>('<dialog></dialog>');
    field.focus();
    dialog.dispatchEvent(new Event('close'));
    expect(document.activeElement).toBe(field);
  });
});

test('learning by the window: the words by the clock, then what was learned', () => {
  binding.stop();
  const states: LearnState[] = [];
  const stop = bindLearning({
    window,
    clock,
    target: 'pedal',
    keymap,
    onState: (state) => states.push(state),
  });
  expect(press('F5')).toBe(true);
  expect(press('F5', 1200)).toBe(true);
  expect(states.map((state) => state.word)).toContain('learn: let go');
  expect(states.at(-1)).toMatchObject({
    step: 'done',
    learned: { codes: ['F5'], sendsKeyUp: true },
  });
  stop();
  expect(press('F5')).toBe(false);
  expect(clock.waiting()).toBe(0);
});
