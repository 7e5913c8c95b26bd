declare const __APP_VERSION__: string;
declare const __APP_COMMIT__: string;

/** The version in package.json when this was built. */
export const appVersion: string = __APP_VERSION__;

/** The short commit this was built from, or 'unknown' where it was built without git. */
export const appCommit: string = __APP_COMMIT__;
