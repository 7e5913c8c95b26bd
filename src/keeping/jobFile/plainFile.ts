import { plainDataProblem } from './plainData';
import { type Refused, refused } from './problems';

/** A file's text as plain data, or why it can't be looked into. */
export function plainFile(
  text: string,
  mostCharacters: number,
): { readonly value: unknown } | Refused {
  if (text.length > mostCharacters) return refused('too big');
  const value = json(text);
  if (value === undefined) return refused('not JSON');
  const problem = plainDataProblem(value);
  return problem === null ? { value } : refused(problem);
}

/** Undefined for text that is not JSON. A byte-order mark before it is passed over. */
function json(text: string): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch {
    return undefined;
  }
}

/** Whether a file says that it is of this format. */
export function isFormat(value: unknown, format: string): boolean {
  return (
    typeof value === 'object' && value !== null && 'format' in value && value.format === format
  );
}

/** ' (1.4.0)', cut to what a version may hold; nothing when the file doesn't say. */
export function versionOf(app: unknown): string {
  if (typeof app !== 'object' || app === null || !('version' in app)) return '';
  const version = /^[0-9A-Za-z.+-]{1,20}$/.exec(String(app.version));
  return version === null ? '' : ` (${version[0]})`;
}
