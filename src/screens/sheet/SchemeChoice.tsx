import type { PushrodAnswer } from '#counting';
import type { Scheme } from '#valvetrain';
import type { Units } from '#words';
import { lengthText } from '../results/orderText';
import { orderWords } from '../results/orderWords';
import { SelectField } from '../shell/SelectField';
import { sheetWords as words } from './sheetWords';

interface Props {
  readonly order: PushrodAnswer;
  readonly units: Units;
  readonly choose: (scheme: Scheme) => void;
}

/** Which answer goes on the sheet, where there are several. */
export function SchemeChoice({ order, units, choose }: Props) {
  const { answers, suggestion } = order.choice;
  if (answers.length < 2) return null;
  return (
    <SelectField
      field="scheme"
      label={words.scheme}
      value={order.taken.scheme}
      onChange={(value) => {
        const chosen = answers.find(({ scheme }) => scheme === value);
        if (chosen !== undefined) choose(chosen.scheme);
      }}
      groups={[
        {
          label: '',
          options: answers.map(({ scheme, lengths, usable, of }) => ({
            value: scheme,
            label: `${orderWords.schemes[scheme]} (${orderWords.schemeNow(
              lengths.map(({ lengthMm }) => lengthText(units, lengthMm)).join(', '),
              usable,
              of,
            )}${scheme === suggestion.scheme ? `, ${orderWords.suggested}` : ''})`,
          })),
        },
      ]}
    />
  );
}
