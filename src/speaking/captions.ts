import type { FactKind } from '#counting';

/** What is written for one line (C12). */
export interface Caption {
  readonly token: number;
  readonly text: string;
  readonly kind: FactKind;
  /** By the clock, ms. */
  readonly at: number;
  /** Whether a voice says it. */
  readonly spoken: boolean;
  /** 'lapsed': an instruction that was not given, since it was no longer fresh. */
  readonly outcome: 'given' | 'lapsed';
}

const KEPT_CAPTIONS = 500;

/** The last captions, the oldest first. One with a token already there takes its place. */
export interface CaptionLog {
  write(caption: Caption): void;
  read(): readonly Caption[];
}

export function createCaptionLog(): CaptionLog {
  let captions: readonly Caption[] = [];
  return {
    write(caption) {
      const known = captions.some(({ token }) => token === caption.token);
      captions = known
        ? captions.map((other) => (other.token === caption.token ? caption : other))
        : [...captions, caption].slice(-KEPT_CAPTIONS);
    },
    read: () => captions,
  };
}
