import type { Page } from 'playwright-core';
import { withoutOfflineEar } from './withoutOfflineEar';

/** One result as a speech service sends it. */
export interface SentResult {
  readonly text: string;
  readonly final: boolean;
}

/** A speech service that says what it is told to, played from outside the page. */
export interface ScriptedEar {
  /** Sends these results for the next utterance, one after another; the last is usually final. */
  hears(...results: readonly SentResult[]): Promise<void>;
  /** One utterance, final at once. */
  says(text: string): Promise<void>;
  /** The service ends its session, as they do after a silence; an error may come first. */
  ends(error?: string): Promise<void>;
  /** A builder's breath between two calls that begin alike. */
  rests(): Promise<void>;
  /** How many sessions have been started. */
  sessions(): Promise<number>;
}

/** Longer than a service's repeat of what it sent already, ms. */
const REPEAT_MS = 800;

interface PageEar {
  sessions: number;
  send(index: number, text: string, final: boolean): void;
  end(error: string | undefined): void;
}

/** Puts a scripted recogniser in every page of the context before its own code runs. */
export async function scriptedEar(page: Page): Promise<ScriptedEar> {
  await withoutOfflineEar(page);
  await page.addInitScript(() => {
    let now: Recogniser | null = null;
    class Recogniser {
      onstart: (() => void) | null = null;
      onaudiostart: (() => void) | null = null;
      onresult: ((event: unknown) => void) | null = null;
      onerror: ((event: { error: string }) => void) | null = null;
      onend: (() => void) | null = null;
      results: unknown[] = [];
      start() {
        now = this;
        this.results = [];
        ear.sessions += 1;
        setTimeout(() => {
          this.onstart?.();
          this.onaudiostart?.();
        }, 2);
      }
      stop() {
        setTimeout(() => this.onend?.(), 2);
      }
      abort() {
        setTimeout(() => this.onend?.(), 2);
      }
    }
    const ear: PageEar = {
      sessions: 0,
      send(index, text, final) {
        if (now === null) throw new Error('no session is open');
        now.results[index] = {
          0: { transcript: text, confidence: final ? 0.9 : 0 },
          length: 1,
          isFinal: final,
        };
        now.onresult?.({ resultIndex: index, results: now.results });
      },
      end(error) {
        const ending = now;
        if (error !== undefined) ending?.onerror?.({ error });
        ending?.onend?.();
      },
    };
    Object.assign(window, { webkitSpeechRecognition: Recogniser, pageEar: ear });
    Object.defineProperty(window, 'SpeechRecognition', { value: undefined });
  });
  let index = 0;
  let session = 0;
  const sessions = () =>
    page.evaluate(() => (window as unknown as { pageEar: PageEar }).pageEar.sessions);
  const hears: ScriptedEar['hears'] = async (...results) => {
    const open = await sessions();
    if (open !== session) index = 0;
    session = open;
    for (const { text, final } of results) {
      await page.evaluate(
        ([at, heard, last]) =>
          (window as unknown as { pageEar: PageEar }).pageEar.send(
            Number(at),
            String(heard),
            Boolean(last),
          ),
        [index, text, final] as const,
      );
    }
    index += 1;
  };
  return {
    hears,
    says: (text) => hears({ text, final: true }),
    ends: (error) =>
      page.evaluate((code) => (window as unknown as { pageEar: PageEar }).pageEar.end(code), error),
    rests: () => page.waitForTimeout(REPEAT_MS),
    sessions,
  };
}
