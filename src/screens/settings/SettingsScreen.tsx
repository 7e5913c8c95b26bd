import { useStore } from 'zustand';
import type { Settings } from '#settings';
import { useServices, useSettings } from '../services';
import { Choice } from '../shell/Choice';
import { Page } from '../shell/Page';
import { UnitsChoice } from '../shell/UnitsChoice';
import { EarPart } from './EarPart';
import { KeysPart } from './KeysPart';
import { ScreenPart } from './ScreenPart';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';
import { VoicePart } from './VoicePart';

/** This device's own choices. */
export function SettingsScreen() {
  const { settings } = useServices();
  const unkept = useStore(settings.store, (state) => state.unkept);
  const { units, numbers, lengths } = useSettings();
  const change = (changes: Partial<Settings>) => settings.change(changes);
  return (
    <Page title={words.title}>
      <p className={styles.quiet}>{words.lead}</p>
      {unkept && <p role="alert">{words.unkept}</p>}
      <section className={styles.part} aria-labelledby="part-figures">
        <h2 id="part-figures">{words.figures}</h2>
        <UnitsChoice value={units} />
        <Choice
          field="numbers"
          label={words.numbers}
          value={numbers}
          options={[
            { value: 'cardinal', label: words.cardinal },
            { value: 'shop', label: words.shop },
          ]}
          onChange={(chosen) => change({ numbers: chosen })}
        />
        <Choice
          field="lengths"
          label={words.lengths}
          value={lengths}
          options={[
            { value: 'cardinal', label: words.lengthCardinal },
            { value: 'shop', label: words.lengthShop },
            { value: 'digits', label: words.lengthDigits },
          ]}
          onChange={(chosen) => change({ lengths: chosen })}
        />
      </section>
      <VoicePart />
      <EarPart />
      <KeysPart />
      <ScreenPart />
    </Page>
  );
}
