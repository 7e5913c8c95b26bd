import { lazy, type ReactNode, Suspense, useEffect } from 'react';
import { useStore } from 'zustand';
import './tokens.css';
import './base.css';
import { BenchScreen } from './bench';
import type { Route } from './route';
import { useBench, useServices } from './services';
import { Action } from './shell/Action';
import { NavBar } from './shell/NavBar';
import { NoticeStrip } from './shell/NoticeStrip';
import { Page } from './shell/Page';
import styles from './shell/shell.module.css';
import { shellWords as words } from './shell/shellWords';
import { useOpenJob } from './shell/useOpenJob';

// Only the bench is needed up to the first count; the rest comes when it is asked for.
const SetUpScreen = lazy(() => import('./set-up'));
const ResultsScreen = lazy(() => import('./results'));
const SheetScreen = lazy(() => import('./sheet'));
const CrankScreen = lazy(() => import('./crank'));
const BeforeBuyingScreen = lazy(() => import('./before-buying'));
const PracticeScreen = lazy(() => import('./practice'));
const JobsScreen = lazy(() => import('./jobs'));
const SettingsScreen = lazy(() => import('./settings'));
const SoundCheckScreen = lazy(() => import('./sound-check'));
const AboutScreen = lazy(() => import('./about'));

/**
 * The whole app: the ways to the screens, and the screen the route names. The bench has the whole
 * page to itself, its ways out among its own touch targets.
 */
export function App() {
  const route = useStore(useServices().route, (state) => state.route);
  const { screen } = route;
  // Nothing lies over the bench while the builder works at it.
  const resting = useBench((state) => state.resting);
  // Each screen is begun at its top, wherever the one before it was scrolled to.
  useEffect(() => {
    if (screen !== 'bench') window.scrollTo(0, 0);
  }, [screen]);
  return (
    <div className={styles.app}>
      {screen !== 'bench' && <NavBar at={screen} />}
      <Suspense fallback={<Wait sentence={words.fetching} />}>
        <Screen route={route} />
      </Suspense>
      {(resting || (screen !== 'bench' && screen !== 'practice')) && <NoticeStrip />}
    </div>
  );
}

function Screen({ route }: { readonly route: Route }): ReactNode {
  switch (route.screen) {
    case 'bench':
      return (
        <WithJob jobId={route.jobId}>
          <BenchScreen />
        </WithJob>
      );
    case 'results':
      return (
        <WithJob jobId={route.jobId}>
          <ResultsScreen />
        </WithJob>
      );
    case 'sheet':
      return (
        <WithJob jobId={route.jobId}>
          <SheetScreen />
        </WithJob>
      );
    case 'crank':
      return (
        <WithJob jobId={route.jobId}>
          <CrankScreen />
        </WithJob>
      );
    case 'set-up':
      return route.jobId === null ? (
        <SetUpScreen jobId={null} />
      ) : (
        <WithJob jobId={route.jobId}>
          <SetUpScreen jobId={route.jobId} />
        </WithJob>
      );
    case 'before':
      return <BeforeBuyingScreen />;
    case 'practice':
      return <PracticeScreen />;
    case 'jobs':
      return <JobsScreen />;
    case 'settings':
      return <SettingsScreen />;
    case 'sound-check':
      return <SoundCheckScreen />;
    case 'about':
      return <AboutScreen />;
    default: {
      const never: never = route;
      return never;
    }
  }
}

/** Draws its children once the bench has the job open. */
function WithJob({ jobId, children }: { readonly jobId: string; readonly children: ReactNode }) {
  const { go } = useServices();
  const opened = useOpenJob(jobId);
  if (opened === 'open') return children;
  if (opened !== 'unreadable' && opened !== 'unknown') return <Wait sentence={words.opening} />;
  return (
    <Page title={words.notOpened}>
      <p role="alert">{words[opened]}</p>
      <Action main onPress={() => go({ screen: 'jobs' })}>
        {words.toJobs}
      </Action>
    </Page>
  );
}

function Wait({ sentence }: { readonly sentence: string }) {
  return (
    <main className={styles.wait}>
      <p role="status">{sentence}</p>
    </main>
  );
}
