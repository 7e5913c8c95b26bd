/** The parts of the Web Speech API that are used, as the specification and browsers have them. */
export interface SpeechResultEvent {
  readonly resultIndex: number;
  readonly results: ArrayLike<
    ArrayLike<{ readonly transcript: string; readonly confidence: number }> & {
      readonly isFinal: boolean;
    }
  >;
}

/** A phrase that is likely, and how much likelier than others (0 to 10). */
export interface PhraseHint {
  readonly phrase: string;
  readonly boost: number;
}

/** One recogniser object: good for one session after another. */
export interface WebRecogniser {
  lang: string;
  continuous: boolean;
  interimResults: boolean;
  maxAlternatives: number;
  processLocally?: boolean;
  phrases?: readonly PhraseHint[];
  onstart: (() => void) | null;
  onaudiostart: (() => void) | null;
  onspeechstart: (() => void) | null;
  onspeechend: (() => void) | null;
  onresult: ((event: SpeechResultEvent) => void) | null;
  onerror: ((event: { readonly error: string }) => void) | null;
  onend: (() => void) | null;
  start(): void;
  stop(): void;
  abort(): void;
}

interface OnDevice {
  readonly langs: readonly string[];
  readonly processLocally: boolean;
}

/** The constructor, with what newer browsers tell of recognition on the device. */
export interface WebRecogniserMaker {
  new (): WebRecogniser;
  available?(options: OnDevice): Promise<string>;
  install?(options: OnDevice): Promise<boolean>;
}

/** The browser's window as far as it is needed. */
export interface WebSpeechWindow {
  readonly SpeechRecognition?: WebRecogniserMaker;
  readonly webkitSpeechRecognition?: WebRecogniserMaker;
  readonly SpeechRecognitionPhrase?: new (phrase: string, boost: number) => PhraseHint;
  readonly navigator: {
    readonly permissions?: {
      query(descriptor: { readonly name: 'microphone' }): Promise<{ readonly state: string }>;
    };
  };
}

/** The constructor by whichever name this browser has it; undefined where there is none. */
export function webRecogniserOf(window: WebSpeechWindow): WebRecogniserMaker | undefined {
  return window.SpeechRecognition ?? window.webkitSpeechRecognition;
}
