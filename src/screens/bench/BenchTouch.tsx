import { useState } from 'react';
import { stageOf } from '#counting';
import { TouchBar, type TouchTarget } from '../pieces/TouchBar';
import { useBench, useServices, useSettings } from '../services';
import { barCommands, type TouchCommand } from './benchTouch';
import { benchWords } from './benchWords';
import { MorePanel } from './MorePanel';

/** The bar of touches. Resting, one target wakes the bench; read-only, there is only the way out. */
export function BenchTouch() {
  const { touch, go } = useServices();
  const job = useBench((state) => state.job);
  const resting = useBench((state) => state.resting);
  const access = useBench((state) => state.access);
  const { practised } = useSettings();
  const [more, setMore] = useState(false);
  const send = ({ command, ...target }: TouchCommand): TouchTarget => ({
    ...target,
    act: () => touch(command),
  });
  const wake: TouchTarget = {
    id: 'wake',
    label: benchWords.goOn,
    leads: true,
    act: () => touch({ type: 'advance' }),
  };
  const toResults: TouchTarget = {
    id: 'results',
    label: benchWords.toResults,
    leads: true,
    act: () => go({ screen: 'results', jobId: job.jobId }),
  };
  const practise: TouchTarget = {
    id: 'practice',
    label: benchWords.practise,
    act: () => go({ screen: 'practice' }),
  };
  const atRest = practised ? [wake] : [wake, practise];
  const writer = access === 'writer';
  const working = stageOf(job) === 'all read' ? [toResults] : [];
  const targets = !writer ? [] : resting ? atRest : [...working, ...barCommands(job).map(send)];
  return (
    <>
      <MorePanel open={more} shut={() => setMore(false)} commands={writer && !resting} />
      <TouchBar label={benchWords.touch} targets={targets}>
        <button type="button" aria-expanded={more} onClick={() => setMore(!more)}>
          {more ? benchWords.less : benchWords.more}
        </button>
      </TouchBar>
    </>
  );
}
