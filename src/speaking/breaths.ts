/** Longer pieces are cut: remote voices go dead in long ones, and a watchdog on a short one is soon. */
const LONGEST_CHARS = 110;
const MS_PER_CHAR = 68;
const ONSET_MS = 250;
/** What the watchdog allows beyond twice the expected time, ms. */
const GRACE_MS = 1000;

/** How long a text is expected to take aloud, ms, at a speaking rate where 1 is the voice's own. */
export function expectedMs(text: string, rate: number): number {
  return (ONSET_MS + MS_PER_CHAR * text.length) / rate;
}

/** When the watchdog ends one piece, ms after it began: twice the expected time and a second. */
export function watchdogMs(text: string, rate: number): number {
  return 2 * expectedMs(text, rate) + GRACE_MS;
}

/** When the watchdog ends a whole line, ms: the watchdogs of its pieces, one after another. */
export function lineWatchdogMs(text: string, rate: number): number {
  return breathsOf(text).reduce((sum, breath) => sum + watchdogMs(breath, rate), 0);
}

/** A text in pieces short enough for one utterance, cut at a full stop, else a comma, else a space. */
export function breathsOf(text: string): readonly string[] {
  const whole = text.trim().replace(/\s+/g, ' ');
  if (whole === '') return [];
  if (whole.length <= LONGEST_CHARS) return [whole];
  const head = whole.slice(0, LONGEST_CHARS + 1);
  const at = cutAt(head);
  return [whole.slice(0, at).trim(), ...breathsOf(whole.slice(at))];
}

function cutAt(head: string): number {
  const sentence = Math.max(
    head.lastIndexOf('. '),
    head.lastIndexOf('? '),
    head.lastIndexOf('! '),
    head.lastIndexOf(': '),
  );
  if (sentence > 0) return sentence + 1;
  const comma = Math.max(head.lastIndexOf(', '), head.lastIndexOf('; '));
  if (comma > 0) return comma + 1;
  const space = head.lastIndexOf(' ');
  return space > 0 ? space : LONGEST_CHARS;
}
