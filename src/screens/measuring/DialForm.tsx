import { useState } from 'react';
import { allowed, cylindersOf, type JobState, setUpOf, valvesLeft } from '#counting';
import { parseValveKey, type ValveId, valveKey } from '#valvetrain';
import type { Units } from '#words';
import { readLength, shortUnit } from '../set-up/draftText';
import { Action } from '../shell/Action';
import { SelectField } from '../shell/SelectField';
import { TextField } from '../shell/TextField';
import { measureWords as words } from './measureWords';
import { TakenLine } from './TakenLine';
import { useTaken } from './useTaken';

const NOTHING: Readonly<Record<string, number>> = {};

interface Props {
  readonly job: JobState;
  readonly units: Units;
}

/** A valve's travel read off a dial indicator, typed in. What it says against a count is told at once. */
export function DialForm({ job, units }: Props) {
  const setUp = setUpOf(job);
  const valves = setUp === null ? [] : cylindersOf(setUp).flatMap((one) => one.valves);
  const [chosen, setChosen] = useState<string | null>(null);
  const [travel, setTravel] = useState('');
  const { taken, give, say } = useTaken();
  const valve = (chosen === null ? null : parseValveKey(chosen)) ?? firstOf(job, valves);
  if (valve === null) return null;

  function take(id: ValveId): void {
    const read = readLength(travel, shortUnit(units), NOTHING);
    if (read.kind !== 'value') say(words.noTravel);
    else if (!allowed(job).includes('readDial')) say(words.busy);
    else if (give({ type: 'readDial', valve: id, travelMm: read.value })) {
      setTravel('');
      setChosen(valveKey(id));
    }
  }

  return (
    <>
      <p>{words.dialHow}</p>
      <SelectField
        field="dial-valve"
        label={words.valve}
        value={valveKey(valve)}
        groups={[
          {
            label: '',
            options: valves.map((id) => ({ value: valveKey(id), label: words.valveName(id) })),
          },
        ]}
        onChange={setChosen}
      />
      <TextField
        field="dial-travel"
        label={words.travel}
        unit={shortUnit(units)}
        figures
        value={travel}
        onChange={setTravel}
      />
      <TakenLine taken={taken} />
      <Action onPress={() => take(valve)}>{words.takeDial}</Action>
    </>
  );
}

/** The valve that is open, else the first still to be read, else the first. */
function firstOf(job: JobState, valves: readonly ValveId[]): ValveId | null {
  return job.open?.valve ?? valvesLeft(job)[0] ?? valves[0] ?? null;
}
