import '@fontsource-variable/atkinson-hyperlegible-next';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { createBench } from '#bench';
import { systemClock } from '#clock';
import {
  joinDevice,
  joinDiagnostics,
  joinEar,
  joinEarRecording,
  joinKeys,
  joinMouth,
  joinPlace,
  joinPractice,
  joinPracticeLog,
  joinSoundCheck,
  joinStore,
  type Mouth,
  saveFile,
} from '#joining';
import { readBackup, readJobFile, writeBackup, writeJobFile } from '#keeping';
import { appCommit, appVersion, browserFeatures, keepScreenOn, screenLocks } from '#platform';
import { App, ErrorBoundary, type Route, routeOf, type Services, ServicesProvider } from '#screens';
import { createSettings, readSettings } from '#settings';
import { createShelf } from '#shelf';

const build = { version: appVersion, commit: appCommit };
const kept = joinStore();
const { keeping } = kept;
const settings = createSettings({
  load: () => keeping.setting('settings'),
  save: (kept) => keeping.putSetting('settings', kept),
});
const mouth: Mouth = joinMouth(window, () => settings.store.getState().settings);
const practiceLog = joinPracticeLog(kept.forBench, systemClock, build);
const bench = createBench({
  clock: systemClock,
  keeper: practiceLog.keeper,
  voice: mouth.speaker,
});
const practice = joinPractice(bench, practiceLog, settings);
mouth.follow(() => bench.store.getState().job);
const shelf = createShelf({
  clock: systemClock,
  app: build,
  newId: () => crypto.randomUUID(),
  keeper: {
    ...kept.forShelf,
    readJobFile,
    writeJobFile: async (events) => writeJobFile(events, build, systemClock.now()),
  },
  backup: {
    ...kept.forBackup,
    readBackup,
    writeBackup: async (logs, own) =>
      writeBackup({ logs, settings: own }, build, systemClock.now()),
    takeSettings: (own) => settings.change(readSettings(own)),
  },
});

let letScreenSleep: (() => void) | null = null;

/** Keys, ear and screen serve the bench, and the practice run on it. */
function countsOn({ screen }: Route): boolean {
  return screen === 'bench' || screen === 'practice';
}

/** The bench follows the address: its job is opened, and the screen kept on while it shows. */
function arrived(route: Route): void {
  letScreenSleep?.();
  letScreenSleep = null;
  if (countsOn(route)) letScreenSleep = keepScreenOn({ locks: screenLocks(window), document });
  else ear.leaveBench();
  if (route.screen === 'practice') practice.begin();
  else practice.leave();
  if (!('jobId' in route) || route.jobId === null) return;
  if (bench.store.getState().jobId !== route.jobId) void bench.open(route.jobId);
}

const place = joinPlace(window, arrived);
const recording = joinEarRecording(keeping, (name, bytes) => saveFile(document, name, bytes));
const soundCheck = joinSoundCheck({
  page: window,
  speaker: mouth.speaker,
  keeping,
  shutEar: () => ear.leaveBench(),
});
const ear = joinEar({
  page: window,
  bench,
  settings,
  speaker: mouth.speaker,
  prints: soundCheck.kept,
  recording,
});
const keys = joinKeys({
  page: window,
  bench,
  settings,
  speaker: mouth.speaker,
  ear,
  onBench: () => countsOn(place.store.getState().route),
});

const device = joinDevice({ page: window, bench, kept });

const services: Services = {
  bench,
  shelf,
  settings,
  mouth: mouth.store,
  keys: keys.store,
  ear: ear.store,
  route: place.store,
  device,
  soundCheck,
  recording: recording.service,
  build,
  features: browserFeatures.map(({ name, detect, lost }) => ({
    name,
    here: detect(window),
    without: lost,
  })),
  go: place.go,
  touch: (command) => bench.submit(command, 'touch'),
  practise: practice.begin,
  toggleEar: ear.toggle,
  agreeToLeave: ear.agree,
  shutEar: ear.shut,
  // Every file written says which build wrote it.
  earLog() {
    const log = ear.log();
    return log === '' ? '' : JSON.stringify({ app: build, ...JSON.parse(log) });
  },
  learnPedal: keys.learnPedal,
  learnListen: keys.learnListen,
  learnKey: keys.learnKey,
  stopLearning: keys.stopLearning,
  forgetKeys: keys.forgetKeys,
  tryVoice: mouth.tryVoice,
  diagnostics: joinDiagnostics({
    page: window,
    build,
    bench,
    device: device.store,
    ear: ear.store,
  }),
  save: (fileName, text) => saveFile(document, fileName, text),
};

/** The first place: the address's own, else the job changed last, else the demo job. */
async function firstRoute(): Promise<Route> {
  const asked = routeOf(window.location.hash);
  if (asked !== null) return asked;
  await shelf.list();
  const last = shelf.store.getState().jobs.find(({ status }) => status === 'open');
  if (last !== undefined) return { screen: 'bench', jobId: last.id };
  const { default: demo } = await import('#demo-job');
  const jobId = await shelf.importJob(JSON.stringify(demo));
  return jobId === null ? { screen: 'jobs' } : { screen: 'bench', jobId };
}

async function start(): Promise<void> {
  await settings.load();
  settings.store.subscribe(({ settings: now }) => follow(now.shop));
  follow(settings.store.getState().settings.shop);
  place.go(await firstRoute());
}

function follow(shop: 'bright' | 'dark'): void {
  document.documentElement.dataset.shop = shop;
  mouth.choose(settings.store.getState().settings);
}

const root = document.getElementById('app');
if (!root) throw new Error('index.html has no element with the id app');

let drawn = false;

function draw(place: HTMLElement): void {
  if (drawn) return;
  drawn = true;
  createRoot(place).render(
    <StrictMode>
      <ErrorBoundary build={build}>
        <ServicesProvider value={services}>
          <App />
        </ServicesProvider>
      </ErrorBoundary>
    </StrictMode>,
  );
}

// While an older window keeps the store from opening there is no first place, but a sentence.
kept.state.subscribe(({ store }) => {
  if (store === 'blocked') draw(root);
});

// Drawn once the first place is known, so that no other screen is fetched or flashes up before it.
void start().finally(() => draw(root));
