import { command, type PhraseGroup } from '../phrase';

export const ask: PhraseGroup = {
  name: 'ask',
  when: 'always; changes nothing',
  fixed: [
    command('say again', { type: 'ask', about: 'again' }, 'say it again', 'say a gain', 'sayagain'),
    command('where am I', { type: 'ask', about: 'where' }, 'where am i now', 'wear am i'),
    command('how sure', { type: 'ask', about: 'how sure' }, 'how sure is it', 'how shore'),
    command("what's left", { type: 'ask', about: 'left' }, 'what is left', "what's laughed"),
    command(
      'read the summary',
      { type: 'ask', about: 'summary' },
      'read a summary',
      'red the summary',
      'read the summery',
      'read summary',
    ),
  ],
  numbers: [],
};
