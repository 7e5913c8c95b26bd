import { shortUnit } from '../set-up/draftText';
import { Action } from '../shell/Action';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import styles from './before.module.css';
import { withLength } from './planChanges';
import { amountText } from './planFigures';
import { planWords as words } from './planWords';
import type { PlanForm } from './usePlanForm';

/** The gap a manual gives at the valve's tip, as travel left and as preload. */
export function TipGapPart({ form }: { readonly form: PlanForm }) {
  const { draft, gap, change, update, leave, notes } = form;
  const { leftMm, preloadMm } = gap;
  const unit = words.unit[shortUnit(draft.units)];
  return (
    <Fold title={words.gapFold}>
      <p>{words.gapIntro}</p>
      <div className={styles.row}>
        <TextField
          field="tipGap"
          label={words.gap}
          unit={unit}
          figures
          value={draft.tipGap}
          notes={notes('tipGap')}
          onChange={(tipGap) => change({ tipGap })}
          onLeave={() => leave('tipGap')}
        />
        <TextField
          field="tipTravel"
          label={words.gapTravel}
          unit={unit}
          figures
          value={draft.tipTravel}
          notes={notes('tipTravel')}
          onChange={(tipTravel) => change({ tipTravel })}
          onLeave={() => leave('tipTravel')}
        />
      </div>
      {leftMm !== null && (
        <p>
          {words.gapLeft(amountText(draft.units, leftMm))}{' '}
          {preloadMm !== null && words.gapPreload(amountText(draft.units, preloadMm))}
        </p>
      )}
      {preloadMm !== null && (
        <Action onPress={() => update((before) => withLength(before, 'preload', preloadMm))}>
          {words.gapTake}
        </Action>
      )}
    </Fold>
  );
}
