import { useServices, useSettings } from '../services';
import { Choice } from '../shell/Choice';
import { DiagonalField } from './DiagonalField';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

/** Brightness of the shop, and from how far the bench's count reads on this screen. */
export function ScreenPart() {
  const { settings } = useServices();
  const { shop } = useSettings();
  return (
    <section className={styles.part} aria-labelledby="part-screen">
      <h2 id="part-screen">{words.screen}</h2>
      <Choice
        field="shop"
        label={words.shopIs}
        value={shop}
        options={[
          { value: 'dark', label: words.dark },
          { value: 'bright', label: words.bright },
        ]}
        onChange={(chosen) => settings.change({ shop: chosen })}
      />
      <DiagonalField />
    </section>
  );
}
