import type { StoreApi } from 'zustand/vanilla';
import type { Bench } from '#bench';
import { systemClock } from '#clock';
import { browserFeatures, createNoticeLog, faultOf } from '#platform';
import type { Build, DeviceState, EarShown } from '#screens';

interface DiagnosticsParts {
  readonly page: Window;
  readonly build: Build;
  readonly bench: Bench;
  readonly device: StoreApi<DeviceState>;
  readonly ear: StoreApi<EarShown>;
}

/**
 * Watches what goes wrong, and gives it as a file's text: versions, what the browser has, the last
 * notices. No sound, nothing heard, no name of a job or a valve is in it.
 */
export function joinDiagnostics(parts: DiagnosticsParts): () => Promise<string> {
  const { page, build, bench, device, ear } = parts;
  const log = createNoticeLog(systemClock.now);
  log.add('opened');
  bench.store.subscribe((now, before) => {
    if (now.access !== before.access) log.add(`bench: ${now.access}`);
    if (now.alarm !== before.alarm) log.add(`writing: ${now.alarm ?? 'well'}`);
    if (now.resting !== before.resting) log.add(now.resting ? 'bench: rests' : 'bench: awake');
  });
  device.subscribe((now, before) => {
    if (now.offline !== before.offline) log.add(`offline: ${now.offline}`);
    if (now.update !== before.update) log.add(`update: ${now.update}`);
    if (now.store !== before.store) log.add(`store: ${now.store}`);
    if (now.lasting !== before.lasting) log.add(`lasting storage: ${now.lasting}`);
  });
  ear.subscribe((now, before) => {
    if (now.state !== before.state) log.add(`ear: ${now.state}, ${now.why}`);
  });
  page.document.addEventListener('visibilitychange', () =>
    log.add(`page: ${page.document.visibilityState}`),
  );
  page.addEventListener('error', ({ error }) => log.add(`fault: ${faultOf(error)}`));
  page.addEventListener('unhandledrejection', ({ reason }) =>
    log.add(`rejected: ${faultOf(reason)}`),
  );

  return async () => {
    const { job, keptThrough } = bench.store.getState();
    const { usage = null, quota = null } = await space(page);
    return `${JSON.stringify(
      {
        format: 'turncaller diagnostics',
        version: 1,
        app: build,
        at: new Date(systemClock.now()).toISOString(),
        browser: page.navigator.userAgent,
        screen: [page.innerWidth, page.innerHeight, page.devicePixelRatio],
        features: browserFeatures.map(({ id, detect }) => ({ id, here: detect(page) })),
        device: device.getState(),
        storageBytes: { usage, quota },
        log: { events: job.seq, keptThrough },
        notices: log.list(),
      },
      null,
      1,
    )}\n`;
  };
}

async function space(page: Window): Promise<StorageEstimate> {
  const { navigator } = page;
  if (!('storage' in navigator)) return {};
  return navigator.storage.estimate().catch(() => ({}));
}
