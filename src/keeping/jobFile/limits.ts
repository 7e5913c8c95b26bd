/** The most a job file may be: a job of a thousand readings is a tenth of it. */
export const MOST_FILE_CHARACTERS = 8_000_000;
export const MOST_EVENTS = 20_000;
/** How deep the values of a job file may nest; what is written nests to ten. */
export const DEEPEST = 16;
/** The newest format of the file around the events. */
export const FILE_VERSION = 1;
export const FILE_FORMAT = 'turncaller job';

/** The most a backup may be: eight jobs of the largest size, hundreds of a usual one. */
export const MOST_BACKUP_CHARACTERS = 64_000_000;
export const MOST_JOBS = 2_000;
/** The newest format of the file around the jobs of a backup. */
export const BACKUP_VERSION = 1;
export const BACKUP_FORMAT = 'turncaller backup';
