/**
 * The browser's own services: what the app needs from the device it runs on, and which build it is.
 * Nothing of the trade lives here, and nothing here imports another room.
 */

export { type BrowserFeature, browserFeatures } from './features';
export { askToLast, type Lasting, persistence, storageLasts } from './lastingStorage';
export { createNoticeLog, faultOf, MOST_NOTICES, type Notice, type NoticeLog } from './noticeLog';
export {
  filesVersion,
  type Offline,
  type OfflineStage,
  type OfflineState,
  watchOffline,
} from './offline/watchOffline';
export { appCommit, appVersion } from './version';
export { keepScreenOn, screenLocks, type WakeLockPage } from './wakeLock';
