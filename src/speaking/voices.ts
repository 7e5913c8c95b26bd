/** What is read of one of the browser's voices. */
export interface VoiceInfo {
  readonly voiceURI: string;
  readonly name: string;
  readonly lang: string;
  /** Speaks without the network. */
  readonly localService: boolean;
  readonly default: boolean;
}

/** Some devices write en_GB. */
function tag(lang: string): string {
  return lang.replace('_', '-').toLowerCase();
}

function speaks(lang: string, language: string): boolean {
  const base = tag(language).split('-')[0];
  return tag(lang).split('-')[0] === base;
}

function score(voice: VoiceInfo, language: string): number {
  const local = voice.localService ? 4 : 0;
  const region = tag(voice.lang) === tag(language) ? 2 : 0;
  return local + region + (voice.default ? 1 : 0);
}

/** The voices of this language, the best first: on the device, of the region, the device's default. */
export function voicesFor<V extends VoiceInfo>(
  voices: readonly V[],
  language: string,
): readonly V[] {
  return voices
    .filter(({ lang }) => speaks(lang, language))
    .sort((a, b) => score(b, language) - score(a, language));
}

/** The wanted voice if the device has it, else the best of the language; null with none. */
export function chooseVoice<V extends VoiceInfo>(
  voices: readonly V[],
  language: string,
  wantedUri: string | null,
): V | null {
  const fit = voicesFor(voices, language);
  return fit.find(({ voiceURI }) => voiceURI === wantedUri) ?? fit[0] ?? null;
}
