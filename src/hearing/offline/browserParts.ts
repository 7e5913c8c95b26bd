import { bytes, sha256, url } from 'virtual:ear-pack';
import workletUrl from './captureWorklet.ts?worker&url';
import type { WorkerPort } from './earWorker';
import { captureMicrophone } from './microphone';
import type { OfflineEarParts } from './offlineEar';

/** Whether this browser can run the offline ear at all. */
export function canRunOffline(page: Window & typeof globalThis): boolean {
  return (
    page.isSecureContext &&
    'AudioWorkletNode' in page &&
    'WebAssembly' in page &&
    'DecompressionStream' in page
  );
}

/** What of the browser's the offline ear is made with. */
export function browserParts(
  page: Window & typeof globalThis,
): Pick<OfflineEarParts, 'source' | 'makeWorker' | 'openCapture'> {
  return {
    source: { url: new URL(url, page.document.baseURI).href, sha256, bytes },
    makeWorker: () =>
      new Worker(new URL('./worker.ts', import.meta.url), {
        type: 'module',
      }) as unknown as WorkerPort,
    openCapture: captureMicrophone(page, workletUrl),
  };
}
