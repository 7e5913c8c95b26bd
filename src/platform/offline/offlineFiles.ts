/** One file of the app as it must come from the server. */
export interface OfflineFile {
  /** Below the folder the app is in, without a leading slash. */
  readonly path: string;
  /** Subresource integrity of its bytes: 'sha256-…'. */
  readonly integrity: string;
}

/** Everything one deployed version needs. */
export interface OfflineFiles {
  /** Names the version: the start of a SHA-256 over all the files. */
  readonly version: string;
  readonly files: readonly OfflineFile[];
}

/** The page itself, which is asked for by the folder's own address. */
export const PAGE = 'index.html';

/** Where one version's files are kept; another folder of the same origin is another app. */
export function cacheName(scope: string, version: string): string {
  return `${cachesOf(scope)}${version}`;
}

/** What the names of all versions' caches begin with. */
export function cachesOf(scope: string): string {
  return `turncaller files ${scope} `;
}

/** The lock every open page shares with the others of its version: while it is held, its files stay. */
export function filesLock(scope: string, version: string): string {
  return `turncaller page ${scope} ${version}`;
}

/** The lock held while a valve is being counted: while it is held, nothing is updated. */
export function countLock(scope: string): string {
  return `turncaller count ${scope}`;
}
