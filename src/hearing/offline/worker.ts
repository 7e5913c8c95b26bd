import { fetchPack, type PackSource } from './fetchPack';
import { type Pipeline, startPipeline } from './pipeline';
import { type Recorder, recorder } from './recorder';
import type { FromWorker, ToWorker } from './workerMessages';

// The worker: everything that listens, off the page's own thread.

const page = self as unknown as {
  postMessage(message: FromWorker): void;
  onmessage: ((event: MessageEvent<ToWorker>) => void) | null;
};
/** Progress is told no more often than this part of the whole. */
const PROGRESS_STEP = 0.02;

let pipeline: Pipeline | null = null;
let sound: MessagePort | null = null;
let records = false;
let taking: Recorder | null = null;

page.onmessage = ({ data }) => {
  switch (data.type) {
    case 'load':
      void load(data);
      return;
    case 'listen':
      listen(data.port, data.rate);
      return;
    case 'grammar':
      pipeline?.follow(data.grammar);
      return;
    case 'deaf':
      deaf();
      return;
    case 'know':
      pipeline?.know(data.prints);
      return;
    case 'record':
      records = data.on;
      return;
    case 'check':
      pipeline?.check(data.on);
      return;
    default:
      data satisfies never;
  }
};

async function load(source: PackSource): Promise<void> {
  let told = 0;
  const fetched = await fetchPack(source, (part) => {
    if (part - told < PROGRESS_STEP) return;
    told = part;
    page.postMessage({ type: 'progress', part });
  });
  if (!fetched.ok) {
    page.postMessage({ type: 'failed', why: fetched.why });
    return;
  }
  try {
    pipeline = await startPipeline(fetched.pack);
    page.postMessage({ type: 'ready' });
  } catch {
    page.postMessage({ type: 'failed', why: 'unable' });
  }
}

function listen(port: MessagePort, rate: number): void {
  deaf();
  pipeline?.reset(rate);
  sound = port;
  taking = records ? recorder(rate) : null;
  port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    taking?.take(data);
    const events = pipeline?.take(data) ?? [];
    if (events.length > 0) page.postMessage({ type: 'events', events });
  };
}

function deaf(): void {
  sound?.close();
  sound = null;
  const recording = taking?.done() ?? null;
  taking = null;
  if (recording !== null) page.postMessage({ type: 'recorded', recording });
}
