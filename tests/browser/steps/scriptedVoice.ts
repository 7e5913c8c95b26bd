import type { Page } from 'playwright-core';

/** Gives the page one voice, whose every line lasts so long, before the page's own code runs. */
export async function scriptedVoice(page: Page, lineMs: number): Promise<void> {
  await page.addInitScript((ms) => {
    const voice = {
      voiceURI: 'test',
      name: 'Test',
      lang: 'en-GB',
      localService: true,
      default: true,
    };
    let speaking = false;
    let cancelled = 0;
    const speech = {
      getVoices: () => [voice],
      get speaking() {
        return speaking;
      },
      pending: false,
      speak(line: { onstart?: () => void; onend?: () => void; text: string }) {
        const mine = cancelled;
        setTimeout(() => {
          if (mine !== cancelled) return;
          speaking = true;
          line.onstart?.();
          setTimeout(
            () => {
              if (mine !== cancelled) return;
              speaking = false;
              Reflect.set(window, 'linesSaid', Number(Reflect.get(window, 'linesSaid') ?? 0) + 1);
              line.onend?.();
            },
            line.text.trim() === '' ? 1 : ms,
          );
        }, 5);
      },
      cancel() {
        cancelled += 1;
        speaking = false;
      },
      addEventListener() {},
    };
    Object.defineProperty(window, 'speechSynthesis', { value: speech });
    class Utterance {
      constructor(readonly text: string) {}
    }
    Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: Utterance });
  }, lineMs);
}

/** How many lines that voice has said to their end. */
export function linesSaid(page: Page): Promise<number> {
  return page.evaluate(() => Number(Reflect.get(window, 'linesSaid') ?? 0));
}
