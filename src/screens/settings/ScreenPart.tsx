import { useState } from 'react';
import { useServices, useSettings } from '../services';
import { Choice } from '../shell/Choice';
import { TextField } from '../shell/TextField';
import { countHeightPx, readingDistanceM } from './readingDistance';
import styles from './settings.module.css';
import { settingsWords as words } from './settingsWords';

const LEAST_IN = 3;
const MOST_IN = 120;

/** Brightness of the shop, and from how far the bench's count reads on this screen. */
export function ScreenPart() {
  const { settings } = useServices();
  const { shop, screenDiagonalIn } = useSettings();
  const [text, setText] = useState(screenDiagonalIn === null ? '' : String(screenDiagonalIn));
  const typed = Number(text.replace(',', '.'));
  const wrong = text.trim() !== '' && !(typed >= LEAST_IN && typed <= MOST_IN);
  const metres =
    screenDiagonalIn === null
      ? null
      : readingDistanceM(
          {
            screenWidthPx: window.screen.width,
            screenHeightPx: window.screen.height,
            diagonalIn: screenDiagonalIn,
          },
          countHeightPx(window.innerWidth),
        );

  function type(next: string): void {
    setText(next);
    const diagonal = Number(next.replace(',', '.'));
    if (next.trim() === '') settings.change({ screenDiagonalIn: null });
    else if (diagonal >= LEAST_IN && diagonal <= MOST_IN)
      settings.change({ screenDiagonalIn: diagonal });
  }

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
      <TextField
        field="diagonal"
        label={words.diagonal}
        hint={words.diagonalHint}
        unit={words.diagonalUnit}
        figures
        value={text}
        notes={wrong ? [{ sentence: words.diagonalWrong }] : []}
        onChange={type}
      />
      {metres !== null && <p role="status">{words.distance(metres.toFixed(1))}</p>}
    </section>
  );
}
