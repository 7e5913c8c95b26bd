import {
  type Adjuster,
  travelByGeometryMm,
  travelByPitchAloneMm,
  travelPerQuarterMm,
} from '#valvetrain';
import { figureMm, figureThou } from '#words';
import { Fold } from '../shell/Fold';
import type { Draft } from './draft';
import { shortUnit } from './draftText';
import { LeverDrawing } from './LeverDrawing';
import { readAdjuster } from './readAdjuster';
import styles from './set-up.module.css';
import { setUpWords as words } from './setUpWords';

/** Where the travel per quarter turn comes from, the other convention beside it. */
export function WhyThisFigure({ draft }: { readonly draft: Draft }) {
  const { adjuster } = readAdjuster(draft);
  if (adjuster === null) return <p className={styles.quiet}>{words.whyNotYet}</p>;
  const figure = (mm: number) => (draft.units === 'inch' ? figureThou(mm, 1) : figureMm(mm, 1));
  const unit = words.unit[shortUnit(draft.units)];
  const lever = travelByGeometryMm(adjuster) / 4;
  const pitch = travelByPitchAloneMm(adjuster);
  const measured = adjuster.measuredTravelPerQuarterMm;
  return (
    <>
      <p className={styles.answer}>
        {words.whyPerQuarter}: <strong>{`${figure(travelPerQuarterMm(adjuster))} ${unit}`}</strong>
      </p>
      <Fold title={words.why}>
        <div className={styles.beside}>
          <table className={styles.figures}>
            <thead>
              <tr>
                <td />
                <th scope="col">{words.perQuarter}</th>
                <th scope="col">{words.perTurn}</th>
              </tr>
            </thead>
            <tbody>
              {measured !== undefined && (
                <Line name={words.whyMeasured} formula="" mm={measured} figure={figure} />
              )}
              <Line
                name={measured === undefined ? words.whyByLever : words.whyByLeverUnused}
                formula={formulaOf(adjuster)}
                mm={lever}
                figure={figure}
              />
              <Line name={words.whyByPitch} formula="p" mm={pitch} figure={figure} />
            </tbody>
          </table>
          <LeverDrawing kind={adjuster.kind} rockerRatio={adjuster.rockerRatio} />
        </div>
        <p>{words.whyKinds[adjuster.kind]}</p>
        <p>
          {Math.abs(lever - pitch) < 1e-9
            ? words.whySame
            : words.whyConflict(`${figure(lever * 4)} ${unit}`, `${figure(pitch * 4)} ${unit}`)}
        </p>
        <p>
          {measured === undefined
            ? words.whyUnmeasured
            : words.whyMeasuredOff(Math.round((measured / lever - 1) * 100))}
        </p>
      </Fold>
    </>
  );
}

interface LineProps {
  readonly name: string;
  readonly formula: string;
  /** Per quarter turn, mm. */
  readonly mm: number;
  readonly figure: (mm: number) => string;
}

function Line({ name, formula, mm, figure }: LineProps) {
  return (
    <tr>
      <th scope="row">
        {name} <i>{formula}</i>
      </th>
      <td>{figure(mm)}</td>
      <td>{figure(mm * 4)}</td>
    </tr>
  );
}

function formulaOf({ kind, leanDeg }: Adjuster): string {
  return kind === 'pivot' && leanDeg !== 0 ? words.formulaLean : words.formula[kind];
}
