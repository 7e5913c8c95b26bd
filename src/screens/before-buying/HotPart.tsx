import type { MaterialId } from '#valvetrain';
import { longUnit } from '../set-up/draftText';
import { Fold } from '../shell/Fold';
import { SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import styles from './before.module.css';
import { HotTable } from './HotTable';
import { withPiece } from './planChanges';
import { planWords as words } from './planWords';
import type { PlanForm } from './usePlanForm';

const pieces = ['block', 'head', 'pushrod'] as const;

/** What warmth does to the preload: an estimate beside the plan, never part of it. */
export function HotPart({ form }: { readonly form: PlanForm }) {
  const { draft, hot } = form;
  return (
    <Fold title={words.hotFold}>
      <p>{words.hotIntro}</p>
      {pieces.map((piece) => (
        <Piece key={piece} form={form} piece={piece} />
      ))}
      <Stem form={form} />
      {hot.estimate === null ? (
        <p className={styles.quiet}>{words.hotEmpty}</p>
      ) : (
        <HotTable estimate={hot.estimate} units={draft.units} />
      )}
      <p className={styles.quiet}>{words.hotBasis}</p>
    </Fold>
  );
}

interface PieceProps {
  readonly form: PlanForm;
  readonly piece: (typeof pieces)[number];
}

function Piece({ form, piece }: PieceProps) {
  const { draft, update, leave, notes } = form;
  const name = words.pieces[piece];
  const typed = draft.hot[piece];
  return (
    <div className={styles.row}>
      <SelectField
        field={`hot.${piece}.material`}
        label={words.pieceMaterial(name)}
        groups={[{ label: '', options: materials }]}
        value={typed.material}
        onChange={(value) =>
          update((before) => withPiece(before, piece, { material: materialOf(value) }))
        }
      />
      <TextField
        field={`hot.${piece}.length`}
        label={words.pieceLength(name)}
        unit={words.unit[longUnit(draft.units)]}
        figures
        value={typed.length}
        notes={notes(`hot.${piece}.length`)}
        onChange={(length) => update((before) => withPiece(before, piece, { length }))}
        onLeave={() => leave(`hot.${piece}.length`)}
        {...(piece === 'pushrod' ? { hint: words.hotPushrodHint } : {})}
      />
      <TextField
        field={`hot.${piece}.rise`}
        label={words.pieceRise(name)}
        unit={words.kelvin}
        figures
        value={typed.rise}
        notes={notes(`hot.${piece}.rise`)}
        onChange={(rise) => update((before) => withPiece(before, piece, { rise }))}
        onLeave={() => leave(`hot.${piece}.rise`)}
      />
    </div>
  );
}

const materials = Object.entries(words.materials).map(([value, label]) => ({ value, label }));

function materialOf(value: string): MaterialId {
  const known: readonly MaterialId[] = [
    'aluminium 356',
    'aluminium 6061',
    'grey iron',
    'steel 4140',
    'steel 1020',
  ];
  return known.find((one) => one === value) ?? 'grey iron';
}

function Stem({ form }: { readonly form: PlanForm }) {
  const { draft, update, leave, notes } = form;
  const { hot } = draft;
  const change = (changes: Partial<typeof hot>) =>
    update((before) => ({ ...before, hot: { ...before.hot, ...changes } }));
  return (
    <>
      <div className={styles.row}>
        <TextField
          field="hot.stem.length"
          label={words.pieceLength(words.stem)}
          unit={words.unit[longUnit(draft.units)]}
          figures
          value={hot.stemLength}
          notes={notes('hot.stem.length')}
          onChange={(stemLength) => change({ stemLength })}
          onLeave={() => leave('hot.stem.length')}
        />
        <TextField
          field="hot.stem.rise"
          label={words.pieceRise(words.stem)}
          unit={words.kelvin}
          figures
          value={hot.stemRise}
          notes={notes('hot.stem.rise')}
          onChange={(stemRise) => change({ stemRise })}
          onLeave={() => leave('hot.stem.rise')}
        />
        <TextField
          field="hot.stem.expansion"
          label={words.stemExpansion}
          unit={words.perK}
          figures
          value={hot.stemExpansion}
          notes={notes('hot.stem.expansion')}
          onChange={(stemExpansion) => change({ stemExpansion })}
          onLeave={() => leave('hot.stem.expansion')}
        />
      </div>
      <p className={styles.quiet}>{words.stemHint}</p>
    </>
  );
}
