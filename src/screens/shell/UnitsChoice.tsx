import type { Units } from '#words';
import { useServices, useSettings } from '../services';
import { Choice } from './Choice';
import { shellWords as words } from './shellWords';

interface Props {
  readonly value: Units;
  /** Puts what is typed already into the units chosen. */
  readonly onChange?: (units: Units) => void;
}

/** Inches or millimetres; the device remembers it. */
export function UnitsChoice({ value, onChange }: Props) {
  const { settings } = useServices();
  const { units } = useSettings();
  return (
    <Choice
      field="units"
      label={words.units}
      value={value}
      options={[
        { value: 'inch', label: words.inch },
        { value: 'mm', label: words.mm },
      ]}
      onChange={(chosen) => {
        onChange?.(chosen);
        if (chosen !== units) settings.change({ units: chosen });
      }}
    />
  );
}
