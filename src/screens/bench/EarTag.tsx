import { useStore } from 'zustand';
import { sayEar } from '#words';
import { StateTag } from '../pieces/StateTag';
import { type EarShown, useServices, useSettings } from '../services';
import { benchWords } from './benchWords';

/** Whether the app is listening, in words and a shape; with the room's noise while it is measured. */
export function EarTag() {
  const ear = useStore(useServices().ear);
  const { whichEar } = useSettings();
  if (whichEar === 'none') return <StateTag shape="barred">{benchWords.ear.none}</StateTag>;
  switch (ear.state) {
    case 'open':
      return (
        <StateTag shape="dot" strong>
          {openWords(ear)}
          {room(ear)}
        </StateTag>
      );
    case 'opening':
      return <StateTag shape="ring open">{openingWords(ear)}</StateTag>;
    case 'shut':
      return <StateTag shape="barred">{shutWords(ear)}</StateTag>;
    case 'dead':
      return (
        <StateTag shape="broken" strong>
          {sayEar({ state: 'dead', why: ear.why, count48: null })}
        </StateTag>
      );
    default: {
      const never: never = ear.state;
      return never;
    }
  }
}

function openWords({ byKey, tooNoisy }: EarShown): string {
  if (tooNoisy) return benchWords.ear.tooNoisy;
  return byKey ? benchWords.ear.byKey : benchWords.ear.open;
}

function openingWords({ fetched }: EarShown): string {
  return fetched === null || fetched >= 1
    ? benchWords.ear.opening
    : benchWords.ear.fetching(Math.floor(fetched * 100));
}

function room({ level }: EarShown): string {
  return level === null ? '' : benchWords.ear.room(Math.round(level));
}

function shutWords({ why, byKey }: EarShown): string {
  if (why === 'too loud') return benchWords.ear.tooLoud;
  return byKey ? benchWords.ear.shutByKey : benchWords.ear.shut;
}
