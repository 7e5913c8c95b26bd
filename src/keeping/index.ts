/**
 * Keeping: logs and jobs on this device's disk, settings beside them, and jobs in and out of files.
 * A log is only ever added to; the list of jobs is a cache of what the logs fold to. Old shapes of
 * events are lifted here, so that counting knows the newest only.
 *
 * Imports counting alone. No words, no screens, and nothing of the browser before `createKeeping`.
 */

export type { Durability } from './appendLog';
export { type BackupRead, readBackup } from './backup/readBackup';
export { type Restored, restoreLog } from './backup/restoreLog';
export { type BackupContents, writeBackup } from './backup/writeBackup';
export type { OnChange } from './changeNotes';
export type { StoreTrouble } from './connection';
export { type HeldLog, type HeldLogs, holdUnkept } from './holdUnkept';
export type { JobCard } from './jobCard';
export { MOST_BACKUP_CHARACTERS, MOST_FILE_CHARACTERS } from './jobFile/limits';
export type { JobFileProblem } from './jobFile/problems';
export { type JobFileRead, readJobFile } from './jobFile/readJobFile';
export { type AppStamp, writeJobFile } from './jobFile/writeJobFile';
export { KeepError, type KeepFailure } from './keepError';
export { createKeeping, type Keeping, type KeepingOptions } from './keeping';
export type { KeptLog, ReadOnly } from './keptLog';
export type { Unliftable } from './lift';
export type { WriterClaim } from './writerLock';
