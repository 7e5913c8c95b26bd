import { type JobState, offGrid, type PushrodAnswer } from '#counting';
import type { Scheme } from '#valvetrain';
import type { Units } from '#words';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { OrderTable } from './OrderTable';
import { amountText, lengthText, measuredLines, restsOn, testLengthsText } from './orderText';
import { orderWords as words } from './orderWords';
import styles from './results.module.css';

/** A smaller difference, under half a thou, would be told as nothing. */
const TOLD_FROM_MM = 0.0127;

interface Props {
  readonly job: JobState;
  readonly units: Units;
  readonly answer: PushrodAnswer;
  readonly choose: (scheme: Scheme) => void;
}

/** One answer: its lengths, why it, whom it fails, the order, and the other answers. */
export function OrderAnswer({ job, units, answer, choose }: Props) {
  const { taken, choice, buying, leftOut } = answer;
  const { suggestion, answers } = choice;
  const many =
    taken.groups.length + taken.lengths.length > 2
      ? `${styles.answer} ${styles.several}`
      : styles.answer;
  const told = suggestion.differences.filter((one) => one.differenceMm >= TOLD_FROM_MM);
  const failing = taken.valves.filter(({ usable }) => !usable);
  return (
    <>
      {taken.groups.length > 0
        ? taken.groups.map(({ label, lengthMm }) => (
            <p key={words.group(label)} className={many}>
              {taken.groups.length > 1 && <span>{words.group(label)} </span>}
              <strong>{lengthMm === null ? words.noneLeft : lengthText(units, lengthMm)}</strong>{' '}
              {words.conventions[buying.convention]}
            </p>
          ))
        : taken.lengths.map(({ lengthMm, valves }) => (
            <p key={lengthMm} className={many}>
              <strong>{lengthText(units, lengthMm)}</strong> {words.forValves(valves.length)}
            </p>
          ))}
      <p>{words.fits(taken.usable, taken.of)}</p>
      {taken.scheme === suggestion.scheme && (
        <ul className={styles.reasons}>
          {suggestion.reasons.map((reason) => (
            <li key={reason}>{words.reasons[reason]}</li>
          ))}
          {told.map((one) => (
            <li key={`${one.by} ${JSON.stringify(one.groups)}`}>
              {words.difference(
                one,
                amountText(units, one.differenceMm),
                amountText(units, one.allowedMm),
              )}
            </li>
          ))}
        </ul>
      )}
      {failing.length > 0 && (
        <>
          <h3>{words.failing}</h3>
          <ul className={styles.reasons}>
            {failing.map(({ id, whyNot }) => (
              <li key={words.valve(id)}>
                {words.valve(id)}: {whyNot === null ? '' : words.whyNot[whyNot]}
              </li>
            ))}
          </ul>
        </>
      )}
      {leftOut.length > 0 && (
        <>
          <h3>{words.leftOutTitle}</h3>
          <ul className={styles.reasons}>
            {leftOut.map(({ valve, why }) => (
              <li key={words.valve(valve)}>
                {words.valve(valve)}: {words.leftOut[why]}
              </li>
            ))}
          </ul>
        </>
      )}
      <OrderTable answer={answer} units={units} />
      <p>{testLengthsText(job, units)}</p>
      <OffGrid job={job} units={units} answer={answer} />
      <p>{restsOn(job)}</p>
      {answers.length > 1 && (
        <Fold title={words.other}>
          <Choice
            field="scheme"
            label={words.other}
            value={taken.scheme}
            options={answers.map((one) => ({
              value: one.scheme,
              label: `${words.schemes[one.scheme]} (${words.schemeNow(
                one.lengths.map(({ lengthMm }) => lengthText(units, lengthMm)).join(', '),
                one.usable,
                one.of,
              )}${one.scheme === suggestion.scheme ? `, ${words.suggested}` : ''})`,
            }))}
            onChange={choose}
          />
        </Fold>
      )}
    </>
  );
}

/** A test length that can't be bought: no fault, but worth knowing. */
function OffGrid({ job, units, answer }: Omit<Props, 'choose'>) {
  const { offer, convention } = answer.buying;
  const lengths = measuredLines(job).flatMap(({ reading, standing }) =>
    reading?.kind === 'counted' && reading.checking ? [] : (standing?.length ?? []),
  );
  const off = lengths.filter((one) => one.convention === convention && offGrid(offer, one.mm));
  return [...new Set(off.map(({ mm }) => lengthText(units, mm)))].map((length) => (
    <p key={length}>{words.offGrid(length)}</p>
  ));
}
