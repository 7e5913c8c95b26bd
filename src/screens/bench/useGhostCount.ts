import { useStore } from 'zustand';
import type { JobState } from '#counting';
import type { Turn48 } from '#valvetrain';
import { CARRIER, grammarFor, hear } from '#words';
import { useServices, useSettings } from '../services';

/** The count being heard and not yet taken; null when what is heard is no count. */
export function useGhostCount(job: JobState): Turn48 | null {
  const ghost = useStore(useServices().ear, (ear) => ear.ghost);
  const { carrier } = useSettings();
  if (ghost === null) return null;
  const hearing = hear(ghost.heard, grammarFor(job, { carrier: carrier ? CARRIER : null }));
  if (hearing.kind !== 'meaning') return null;
  for (const meaning of hearing.meanings) {
    if ('command' in meaning && meaning.command.type === 'call') return meaning.command.to48;
  }
  return null;
}
