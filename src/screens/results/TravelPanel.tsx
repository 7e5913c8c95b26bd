import { useState } from 'react';
import {
  type DialTravel,
  type JobState,
  type LengthsTravel,
  setUpOf,
  travelByDial,
  travelByLengths,
  travelIn,
} from '#counting';
import { adjusterProblems, type Travel } from '#valvetrain';
import { caption, type Units } from '#words';
import { useServices, useSettings } from '../services';
import { Action } from '../shell/Action';
import { submitFromScreen } from '../shell/submit';
import { lengthText, travelText, valvesText } from './orderText';
import styles from './results.module.css';
import { sureWords as words } from './sureWords';

/** Valves' differences may scatter so much more than their counts explain, from memory. */
const WIDE_SCATTER = 2;

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** The travel of a quarter turn: what is used, and what the readings themselves give it as. */
export function TravelPanel({ job, units }: Props) {
  const setUp = setUpOf(job);
  const byDial = travelByDial(job);
  const byLengths = travelByLengths(job);
  if (setUp === null || setUp.checking !== undefined) return null;
  if (byDial === null && byLengths === null) return null;
  const now = travelIn(setUp);
  return (
    <section className={styles.part} aria-labelledby="travel">
      <h2 id="travel">{words.travel}</h2>
      {now === null ? (
        <p>{words.noAdjuster}</p>
      ) : (
        <p>{words.travelNow(withU(units, now), words.bases[now.basis])}</p>
      )}
      {byDial !== null && <ByDial job={job} units={units} found={byDial} />}
      {byLengths !== null && <ByLengths job={job} units={units} found={byLengths} />}
    </section>
  );
}

function ByDial({ job, units, found }: Props & { readonly found: DialTravel }) {
  const { travel, valves, contradicting } = found;
  return (
    <div data-travel="dial readings">
      <p>
        {words.byDial(valves.length)}: <strong>{withU(units, travel)}</strong>.
      </p>
      {contradicting.length > 0 && (
        <p role="alert">{words.contradict(valvesText(contradicting))}</p>
      )}
      <Use job={job} units={units} travel={travel} />
    </div>
  );
}

function ByLengths({ job, units, found }: Props & { readonly found: LengthsTravel }) {
  const { travel, valves, shorterMm, longerMm } = found;
  if (travel === null) return <p role="alert">{words.noRise(valvesText(valves))}</p>;
  const lengths = [shorterMm, longerMm].map((mm) => lengthText(units, mm)).join(', ');
  return (
    <div data-travel="two test lengths">
      <p>
        {words.byLengths(valves.length, lengths)}: <strong>{withU(units, travel)}</strong>.
      </p>
      {travel.scatterRatio > WIDE_SCATTER && <p>{words.scatter}</p>}
      <Use job={job} units={units} travel={travel} />
    </div>
  );
}

/** Puts a measured travel into the set-up, for every reading. */
function Use({ job, units, travel }: Props & { readonly travel: Travel }) {
  const { bench } = useServices();
  const settings = useSettings();
  const [told, setTold] = useState('');
  const setUp = setUpOf(job);
  if (setUp === null || setUp.adjuster === null) return null;
  const { adjuster } = setUp;
  const { perQuarterMm, uMm, basis } = travel;
  const measured = { ...adjuster, measuredTravelPerQuarterMm: perQuarterMm };
  const odd = adjusterProblems(measured).filter(
    ({ field }) => field === 'measuredTravelPerQuarterMm',
  );
  const now = travelIn(setUp);
  if (now?.perQuarterMm === perQuarterMm && now.uMm === uMm) return <p>{words.inUse}</p>;

  function use(): void {
    if (setUp === null) return;
    const refused = submitFromScreen(bench, {
      type: 'changeSetUp',
      setUp: {
        ...setUp,
        adjuster: measured,
        measuredTravel: { perQuarterMm, uMm, basis },
      },
      appliesTo: 'all',
    });
    const context = { ...settings, hands: 'alone' as const, unkept: false };
    setTold((refused ?? []).map((one) => caption(one, context)).join(' '));
  }

  return (
    <>
      {odd.map(({ sentence }) => (
        <p key={sentence}>{sentence}</p>
      ))}
      <Action onPress={use}>
        {words.use(travelText(units, perQuarterMm), job.readings.length)}
      </Action>
      {told !== '' && <p role="alert">{told}</p>}
    </>
  );
}

/** With 95 in a hundred of what it may be. */
function withU(units: Units, { perQuarterMm, uMm }: Travel): string {
  return words.giveOrTake(travelText(units, perQuarterMm), travelText(units, 1.96 * uMm));
}
