/** The most a job file may be: a job of a thousand readings is a tenth of it. */
export const MOST_FILE_CHARACTERS = 8_000_000;
export const MOST_EVENTS = 20_000;
/** How deep the values of a job file may nest; what is written nests to ten. */
export const DEEPEST = 16;
/** The newest format of the file around the events. */
export const FILE_VERSION = 1;
export const FILE_FORMAT = 'turncaller job';
