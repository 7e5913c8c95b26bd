import { useState } from 'react';
import { allowed, type JobState, setUpOf } from '#counting';
import type { LengthConvention } from '#valvetrain';
import { type Units, writeInches, writeMm } from '#words';
import { longUnit, readLength } from '../set-up/draftText';
import { Action } from '../shell/Action';
import { Choice } from '../shell/Choice';
import { TextField } from '../shell/TextField';
import { measureWords as words } from './measureWords';
import { TakenLine } from './TakenLine';
import { useTaken } from './useTaken';

const NOTHING: Readonly<Record<string, number>> = {};

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** Another test pushrod fitted in the middle of a job, and all valves counted once more. */
export function RodForm({ job, units }: Props) {
  const fitted = job.pushrod;
  const [length, setLength] = useState('');
  const [convention, setConvention] = useState<LengthConvention>(
    fitted?.convention ?? 'tip to tip',
  );
  const { taken, give, say } = useTaken();
  const now = allowed(job);

  function fit(): void {
    const read = readLength(length, longUnit(units), NOTHING);
    if (read.kind !== 'value') say(words.noLength[units]);
    else if (!now.includes('fitPushrod')) say(words.busy);
    else if (give({ type: 'fitPushrod', length: { mm: read.value, convention } })) setLength('');
  }

  function again(): void {
    if (!now.includes('startRound')) say(words.busy);
    else give({ type: 'startRound', purpose: 'measure' });
  }

  return (
    <>
      <p>{words.rodHow}</p>
      <p>
        {fitted === null
          ? words.rodNone
          : words.rodNow(units === 'inch' ? writeInches(fitted.mm) : writeMm(fitted.mm))}
      </p>
      <TextField
        field="rod-length"
        label={words.length}
        unit={longUnit(units)}
        figures
        value={length}
        onChange={setLength}
      />
      <Choice
        field="rod-convention"
        label={words.convention}
        value={convention}
        options={(['tip to tip', 'full ball'] as const).map((value) => ({
          value,
          label: words.conventions[value],
        }))}
        onChange={setConvention}
      />
      <Action onPress={fit}>{words.fit}</Action>
      {setUpOf(job)?.engine != null && job.readings.length > 0 && (
        <>
          <p>{words.roundHow}</p>
          <Action onPress={again}>{words.round}</Action>
        </>
      )}
      <TakenLine taken={taken} />
    </>
  );
}
