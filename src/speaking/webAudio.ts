import type { Beeper } from './ticker';

const ATTACK_S = 0.002;
const RELEASE_S = 0.008;

/**
 * A beeper on one shared AudioContext, opened by the first gesture. iOS interrupts it at a call or a
 * lock: it is woken when the page is shown again, or by the next gesture where only that may.
 *
 * @param open throws or returns null where there is no Web Audio.
 * @param onShown calls back each time the page is shown again.
 */
export function webAudioBeeper(
  open: () => AudioContext | null,
  onShown: (wake: () => void) => void = () => {},
): Beeper {
  let context: AudioContext | null = null;
  onShown(() => {
    if (context !== null && context.state !== 'running') void resumed(context);
  });

  function opened(): AudioContext | null {
    try {
      context ??= open();
    } catch {
      context = null;
    }
    return context;
  }

  return {
    nowS: () => (context?.state === 'running' ? context.currentTime : null),
    beep({ hz, toHz, ms, wave, loudness }, atS) {
      if (context === null) return;
      const endS = atS + ms / 1000;
      const tone = context.createOscillator();
      const level = context.createGain();
      tone.type = wave;
      tone.frequency.setValueAtTime(hz, atS);
      if (toHz !== undefined) tone.frequency.exponentialRampToValueAtTime(toHz, endS);
      // Ramps, since a tone cut square clicks and the click hides the pitch.
      level.gain.setValueAtTime(0, atS);
      level.gain.linearRampToValueAtTime(loudness, atS + ATTACK_S);
      level.gain.setValueAtTime(loudness, Math.max(atS + ATTACK_S, endS - RELEASE_S));
      level.gain.linearRampToValueAtTime(0, endS);
      tone.connect(level).connect(context.destination);
      tone.start(atS);
      tone.stop(endS);
    },
    async wake() {
      const waking = opened();
      if (waking !== null) await resumed(waking);
    },
  };
}

async function resumed(context: AudioContext): Promise<void> {
  try {
    await context.resume();
  } catch {
    // A refused resume leaves the ticks silent until the next gesture; captions carry on.
  }
}
