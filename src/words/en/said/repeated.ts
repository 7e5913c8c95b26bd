import type { Foretold, Repeated } from '#counting';
import type { SayingContext } from '../../context';
import { cardinal } from '../numbers';
import { amountWords, figureWithUnit } from './figures';
import { commas, isFull, lines, sentence } from './pieces';
import { judgedWords } from './sure';

/** What stands for a valve read more than once: 'Mean of two, eighty-six, fits. They agree.' */
export function repeatedWords(
  { figures, readings, compared }: Repeated,
  context: SayingContext,
): string {
  const mean =
    readings < 2
      ? ''
      : sentence(
          commas(
            `mean of ${cardinal(readings)}`,
            figureWithUnit(figures, context),
            judgedWords(figures),
          ),
        );
  return lines(mean, compared === null ? '' : comparedWords(compared, context));
}

/** A valve of the final check: 'As predicted.', or what was predicted and what to do. */
export function foretoldWords(foretold: Foretold | undefined, context: SayingContext): string {
  if (foretold === undefined) return '';
  const { agreement, preloadMm } = foretold;
  if (agreement.agrees) return 'As predicted.';
  const was = amountWords(preloadMm, context);
  if (!isFull(context)) return `Predicted ${was}.`;
  const by = amountWords(Math.abs(agreement.differenceMm), context);
  return `Predicted ${was}: ${by} off, and only ${amountWords(agreement.allowedMm, context)} is the noise of it. Count again.`;
}

/** Whether two ways of knowing a valve agree; told in full, or where they don't. */
function comparedWords(
  { with: what, agreement }: NonNullable<Repeated['compared']>,
  context: SayingContext,
): string {
  const { agrees, differenceMm, allowedMm } = agreement;
  if (agrees) return isFull(context) ? `${subjects[what]} agree.` : '';
  const by = amountWords(Math.abs(differenceMm), context);
  if (!isFull(context)) return `${subjects[what]} differ by ${by}.`;
  const noise = amountWords(allowedMm, context);
  return `${subjects[what]} differ by ${by}, and only ${noise} is the noise of it: count again.`;
}

const subjects: Readonly<Record<NonNullable<Repeated['compared']>['with'], string>> = {
  repeat: 'The repeats',
  count: 'Dial and count',
  dial: 'Count and dial',
  'other pushrod': 'The two pushrods',
};
