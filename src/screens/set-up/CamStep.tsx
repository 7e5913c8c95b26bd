import { eventsFromLobes, lobesFromEvents, statedLifts } from '#valvetrain';
import { Choice } from '../shell/Choice';
import { Fold } from '../shell/Fold';
import { TextField } from '../shell/TextField';
import { camWords as words } from './camWords';
import type { CamDraft } from './crankDraft';
import { cardRead } from './readCrank';
import styles from './set-up.module.css';
import type { SetUpForm } from './useSetUpForm';

interface FieldsProps {
  readonly form: SetUpForm;
  readonly onCam: (changes: Partial<CamDraft>) => void;
}

/** The cam card in whichever form it comes, or that there is none. Folded: most are not known. */
export function CamStep({ form }: { readonly form: SetUpForm }) {
  const { draft, update, leave, notes } = form;
  const { cam } = draft;
  function onCam(changes: Partial<CamDraft>): void {
    update((before) => ({ ...before, cam: { ...before.cam, ...changes } }));
    // The plan is shown at once, so what is wrong with it is too.
    leave('walk.method');
    leave('walk.margin');
  }
  const read = cardRead(cam);
  return (
    <Fold title={words.step} now={words.now[cam.form]}>
      <p className={styles.quiet}>{words.why}</p>
      <Choice
        field="cam.form"
        label={words.form}
        value={cam.form}
        options={(['not known', 'events', 'durations'] as const).map((value) => ({
          value,
          label: words.forms[value],
        }))}
        onChange={(chosen) => onCam({ form: chosen })}
      />
      {cam.form !== 'not known' && (
        <Choice
          field="cam.statedAt"
          label={words.statedAt}
          value={cam.statedAt}
          notes={notes('cam.statedAt')}
          options={statedLifts.map((value) => ({ value, label: words.stated[value] }))}
          onChange={(statedAt) => onCam({ statedAt })}
        />
      )}
      {cam.form === 'events' && <EventFields form={form} onCam={onCam} />}
      {cam.form === 'durations' && <LobeFields form={form} onCam={onCam} />}
      <div aria-live="polite">
        {read?.card.form === 'events' && (
          <p>{words.inOtherForm.events(lobesFromEvents(read.card.events))}</p>
        )}
        {read?.card.form === 'durations' && (
          <p>{words.inOtherForm.durations(eventsFromLobes(read.card.lobes))}</p>
        )}
        {read?.timing.note != null && <p className={styles.evidence}>{read.timing.note}</p>}
      </div>
    </Fold>
  );
}

function EventFields({ form, onCam }: FieldsProps) {
  const { cam } = form.draft;
  const fields = ['intakeOpensBeforeTdcDeg', 'intakeClosesAfterBdcDeg'] as const;
  const others = ['exhaustOpensBeforeBdcDeg', 'exhaustClosesAfterTdcDeg'] as const;
  return (
    <>
      <p className={styles.quiet}>{words.eventsHint}</p>
      <div className={styles.windowFigures}>
        {[...fields, ...others].map((name) => (
          <Degrees
            key={name}
            form={form}
            name={name}
            label={words.events[name]}
            value={cam.events[name]}
            onChange={(text) => onCam({ events: { ...cam.events, [name]: text } })}
          />
        ))}
      </div>
      <Fold title={words.alsoPrinted}>
        <p className={styles.quiet}>{words.alsoHint}</p>
        <div className={styles.windowFigures}>
          {lobeNames.map((name) => (
            <Lobe key={name} name={name} form={form} onCam={onCam} />
          ))}
        </div>
      </Fold>
    </>
  );
}

const lobeNames = [
  'intakeDurationDeg',
  'exhaustDurationDeg',
  'lobeSeparationDeg',
  'intakeCentrelineDeg',
] as const;

function LobeFields({ form, onCam }: FieldsProps) {
  const { cam } = form.draft;
  return (
    <>
      <Choice
        field="cam.placedBy"
        label={words.placedBy}
        value={cam.placedBy}
        options={(['centreline', 'advance'] as const).map((value) => ({
          value,
          label: words.placings[value],
        }))}
        onChange={(placedBy) => onCam({ placedBy })}
      />
      <div className={styles.windowFigures}>
        {lobeNames
          .filter((name) => name !== 'intakeCentrelineDeg' || cam.placedBy === 'centreline')
          .map((name) => (
            <Lobe key={name} name={name} form={form} onCam={onCam} />
          ))}
        {cam.placedBy === 'advance' && (
          <Degrees
            form={form}
            name="advance"
            label={words.advance}
            hint={words.advanceHint}
            value={cam.advance}
            onChange={(advance) => onCam({ advance })}
          />
        )}
      </div>
    </>
  );
}

function Lobe({ name, form, onCam }: FieldsProps & { readonly name: (typeof lobeNames)[number] }) {
  const { lobes } = form.draft.cam;
  return (
    <Degrees
      form={form}
      name={name}
      label={words.lobes[name]}
      value={lobes[name]}
      onChange={(text) => onCam({ lobes: { ...lobes, [name]: text } })}
    />
  );
}

interface DegreesProps {
  readonly form: SetUpForm;
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly hint?: string;
  readonly onChange: (text: string) => void;
}

function Degrees({ form, name, label, value, hint, onChange }: DegreesProps) {
  const field = `cam.${name}`;
  return (
    <TextField
      field={field}
      label={label}
      unit={words.unit}
      figures
      value={value}
      notes={form.notes(field)}
      onChange={onChange}
      onLeave={() => form.leave(field)}
      {...(hint === undefined ? {} : { hint })}
    />
  );
}
