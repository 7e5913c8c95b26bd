import { DiagonalField, useReadingDistanceM } from '../settings/DiagonalField';
import { Fold } from '../shell/Fold';
import { setUpWords as words } from './setUpWords';

/** From how far the bench reads: asked with the job, kept with the device. */
export function ScreenStep() {
  const metres = useReadingDistanceM();
  return (
    <Fold
      title={words.screenStep}
      now={metres === null ? words.screenUnknown : words.screenReads(metres.toFixed(1))}
    >
      <DiagonalField />
    </Fold>
  );
}
