import { type JobState, setUpOf } from '#counting';
import type { Units } from '#words';
import { Fold } from '../shell/Fold';
import { DialForm } from './DialForm';
import { measureWords as words } from './measureWords';
import { RodForm } from './RodForm';

/** Measuring otherwise than by counting on: a dial indicator, another test pushrod. */
export function MeasureForms({ job, units }: { readonly job: JobState; readonly units: Units }) {
  const setUp = setUpOf(job);
  if (setUp === null) return null;
  return (
    <>
      {setUp.engine !== null && (
        <Fold title={words.dial}>
          <DialForm job={job} units={units} />
        </Fold>
      )}
      {setUp.checking === undefined && (
        <Fold title={words.rod}>
          <RodForm job={job} units={units} />
        </Fold>
      )}
    </>
  );
}
