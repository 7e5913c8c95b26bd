import type { Language } from '../language';
import { said } from './said';
import { quiet } from './said/quiet';
import { refused } from './said/refused';
import { shown } from './shown';

/** English, the trade's own. */
export const en = {
  tag: 'en-GB',
  said,
  quiet,
  lapsed: () => 'Turn not called: it came too late. Hands clear calls it again.',
  refused: (refusal) => refused(refusal, {}),
  shown,
} satisfies Language<typeof shown>;
