import { fileURLToPath } from 'node:url';

/** The project's own folder, with a slash at its end. */
export const root = fileURLToPath(new URL('..', import.meta.url));
