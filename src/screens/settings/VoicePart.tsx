import { useStore } from 'zustand';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { SelectField } from '../shell/SelectField';
import { Tick } from '../shell/Tick';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

const rates = [
  { value: '0.8', rate: 0.8, label: words.rates.slow },
  { value: '1', rate: 1, label: words.rates.usual },
  { value: '1.25', rate: 1.25, label: words.rates.quick },
  { value: '1.5', rate: 1.5, label: words.rates.faster },
] as const;

/** What is spoken, how much and by which voice. */
export function VoicePart() {
  const { settings, mouth, tryVoice } = useServices();
  const { speaks, headset, level, voice, rate } = useSettings();
  const { voices, silent } = useStore(mouth);
  return (
    <section className={styles.part} aria-labelledby="part-voice">
      <h2 id="part-voice">{words.voice}</h2>
      <div className={styles.ticks}>
        <Tick
          label={words.speaks}
          ticked={speaks}
          onChange={(on) => settings.change({ speaks: on })}
        />
        <Tick
          label={words.headset}
          ticked={headset}
          onChange={(on) => settings.change({ headset: on })}
        />
      </div>
      {silent !== null && <p role="status">{words.silent[silent]}</p>}
      <Choice
        field="level"
        label={words.level}
        value={level}
        options={[
          { value: 'terse', label: words.terse },
          { value: 'plain', label: words.plain },
          { value: 'teaching', label: words.teaching },
        ]}
        onChange={(chosen) => settings.change({ level: chosen })}
      />
      <SelectField
        field="voice"
        label={words.voiceName}
        unchosen={words.voiceAuto}
        value={voice ?? ''}
        groups={[{ label: '', options: known(voices, voice) }]}
        onChange={(name) => settings.change({ voice: name === '' ? null : name })}
      />
      <Choice
        field="rate"
        label={words.rate}
        value={rates.find((one) => one.rate === rate)?.value ?? ''}
        options={rates}
        onChange={(chosen) =>
          settings.change({ rate: rates.find(({ value }) => value === chosen)?.rate ?? 1 })
        }
      />
      <Action onPress={tryVoice}>{words.tryVoice}</Action>
    </section>
  );
}

/** The voices here, and the chosen one even where this device has not got it now. */
function known(voices: readonly string[], chosen: string | null) {
  const names = chosen === null || voices.includes(chosen) ? voices : [...voices, chosen];
  return names.map((name) => ({ value: name, label: name }));
}
