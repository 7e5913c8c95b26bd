import { useState } from 'react';
import type { Announcement, CommandBody } from '#counting';
import { caption } from '#words';
import { useServices, useSettings } from '../services';
import { submitFromScreen } from '../shell/submit';
import { measureWords as words } from './measureWords';

/** What a form's command came to: what the bench told of it, in words. */
export interface Taken {
  readonly text: string;
  readonly refused: boolean;
}

/** Gives the bench commands from a form and holds what it told of the last. */
export function useTaken() {
  const { bench } = useServices();
  const settings = useSettings();
  const [taken, setTaken] = useState<Taken | null>(null);
  const line = (one: Announcement) => caption(one, { ...settings, hands: 'alone', unkept: false });

  function give(body: CommandBody): boolean {
    const refused = submitFromScreen(bench, body);
    const told = refused ?? bench.store.getState().told;
    setTaken({ text: told.map(line).join(' ') || words.refused, refused: refused !== null });
    return refused === null;
  }

  return { taken, give, say: (text: string) => setTaken({ text, refused: true }) };
}
