import { useState } from 'react';
import { useServices, useSettings } from '../services';
import { TextField } from '../shell/TextField';
import { countHeightPx, readingDistanceM } from './readingDistance';
import { settingsWords as words } from './settingsWords';

const LEAST_IN = 3;
const MOST_IN = 120;

/** From how far the bench's count reads on this screen, metres; null while its size is not told. */
export function useReadingDistanceM(): number | null {
  const { screenDiagonalIn } = useSettings();
  if (screenDiagonalIn === null) return null;
  const { width, height } = window.screen;
  const size = { screenWidthPx: width, screenHeightPx: height, diagonalIn: screenDiagonalIn };
  return readingDistanceM(size, countHeightPx(window.innerWidth));
}

/** The screen's diagonal, and from how far the count then reads. Belongs to the device, not the job. */
export function DiagonalField() {
  const { settings } = useServices();
  const { screenDiagonalIn } = useSettings();
  const metres = useReadingDistanceM();
  const [text, setText] = useState(screenDiagonalIn === null ? '' : String(screenDiagonalIn));
  const typed = Number(text.replace(',', '.'));
  const wrong = text.trim() !== '' && !(typed >= LEAST_IN && typed <= MOST_IN);

  function type(next: string): void {
    setText(next);
    const diagonal = Number(next.replace(',', '.'));
    if (next.trim() === '') settings.change({ screenDiagonalIn: null });
    else if (diagonal >= LEAST_IN && diagonal <= MOST_IN)
      settings.change({ screenDiagonalIn: diagonal });
  }

  return (
    <>
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
    </>
  );
}
