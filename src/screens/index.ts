/**
 * What is seen: React, one folder a screen, shared pieces in pieces/.
 * Reads bench, shelf, settings and the pure rooms; talks to no device and keeps nothing itself.
 */

export { App } from './App';
export { BenchScreen } from './bench';
export type { Build } from './build';
export type { Device, DeviceState } from './device';
export { ErrorBoundary } from './ErrorBoundary';
export { isPractice, PRACTICE_JOB } from './practice/practiceJob';
export { hashOf, type Route, routeOf } from './route';
export {
  type Caption,
  type EarShown,
  type KeyAct,
  type KeysState,
  type MouthState,
  type RecordingService,
  type RecordingShown,
  type Services,
  ServicesProvider,
  type SoundCheckService,
  type SoundCheckShown,
} from './services';
