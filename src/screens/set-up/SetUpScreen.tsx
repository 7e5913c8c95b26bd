import { useEffect, useMemo, useState } from 'react';
import { setUpOf } from '#counting';
import { useBench, useServices, useSettings } from '../services';
import { Page } from '../shell/Page';
import { ChangeForm } from './ChangeForm';
import { type Draft, emptyDraft } from './draft';
import { inUnits } from './draftChanges';
import { draftFrom } from './draftFrom';
import { draftLeftBy, dropDraft, keptDraft } from './keptDraft';
import { NewJobForm } from './NewJobForm';
import { setUpWords as words } from './setUpWords';

interface Start {
  readonly draft: Draft;
  readonly note: string | null;
}

/** A new job, or with a job's id the set-up of the one open on the bench. */
export function SetUpScreen({ jobId }: { readonly jobId: string | null }) {
  return jobId === null ? <NewJob /> : <Change key={jobId} jobId={jobId} />;
}

function NewJob() {
  const { shelf } = useServices();
  const { units } = useSettings();
  const [start, setStart] = useState<Start | null>(() => {
    const kept = keptDraft(sessionStorage, null);
    if (kept === null) return null;
    const planned = draftLeftBy(sessionStorage, null) === 'before buying';
    return {
      draft: inUnits(kept, units),
      note: planned ? words.planned : words.restored,
    };
  });
  const [fresh, setFresh] = useState(0);

  useEffect(() => {
    if (start !== null) return;
    let here = true;
    const empty = { draft: emptyDraft(units), note: null };
    shelf.lastSetUp().then(
      (last) => {
        if (!here) return;
        if (last === null) setStart(empty);
        else
          setStart({
            draft: { ...draftFrom(last, units), name: '' },
            note: words.copied(last.name),
          });
      },
      () => {
        if (here) setStart(empty);
      },
    );
    return () => {
      here = false;
    };
  }, [shelf, start, units]);

  return (
    <Page title={words.title}>
      {start === null ? (
        <p role="status">{words.loading}</p>
      ) : (
        <NewJobForm
          key={fresh}
          start={start.draft}
          note={start.note}
          onStartEmpty={() => {
            dropDraft(sessionStorage, null);
            setStart({ draft: emptyDraft(units), note: null });
            setFresh(fresh + 1);
          }}
        />
      )}
    </Page>
  );
}

function Change({ jobId }: { readonly jobId: string }) {
  const { units } = useSettings();
  const access = useBench((state) => state.access);
  const setUp = useBench((state) => setUpOf(state.job));
  const [kept, setKept] = useState(() => keptDraft(sessionStorage, jobId));
  const [unitsAtStart] = useState(units);
  // The form converts its own text when the units change, so its start stays as it was.
  const start = useMemo(
    () => (kept === null ? setUp && draftFrom(setUp, unitsAtStart) : inUnits(kept, unitsAtStart)),
    [kept, setUp, unitsAtStart],
  );
  const trouble = start === null ? words.noJob : access === 'writer' ? null : words.readOnly;
  return (
    <Page title={words.titleChange}>
      {start === null || trouble !== null ? (
        <p role="status">{trouble}</p>
      ) : (
        <ChangeForm
          key={kept === null ? 'in force' : 'restored'}
          jobId={jobId}
          start={start}
          restored={
            kept === null
              ? null
              : {
                  note: words.restored,
                  onDrop() {
                    dropDraft(sessionStorage, jobId);
                    setKept(null);
                  },
                }
          }
        />
      )}
    </Page>
  );
}
