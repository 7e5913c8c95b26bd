import { hasRefusal, type LifterKind, lifterKinds, type Window, windowProblems } from '#valvetrain';

/** A window the builder keeps under a name of their own, mm. */
export interface NamedWindow {
  /** Of the shape; one of a later version is not read. */
  readonly v: 1;
  readonly name: string;
  readonly window: Window;
}

/** More than these are not kept. */
export const MOST_WINDOWS = 50;
export const LONGEST_WINDOW_NAME = 60;

type Fields = Readonly<Record<string, unknown>>;

/** The windows among whatever was kept: what can't be a window, or could not be counted on, is left out. */
export function readNamedWindows(value: unknown): readonly NamedWindow[] {
  if (!Array.isArray(value)) return [];
  const all = value.flatMap((one) => readNamedWindow(one) ?? []);
  const once = all.filter((one, at) => all.findIndex(({ name }) => name === one.name) === at);
  return once.slice(0, MOST_WINDOWS);
}

/** The windows with one kept under a name, in place of the one it had; in the order of their names. */
export function withNamedWindow(
  windows: readonly NamedWindow[],
  name: string,
  window: Window,
): readonly NamedWindow[] {
  const kept: NamedWindow = { v: 1, name: name.trim().slice(0, LONGEST_WINDOW_NAME), window };
  return [...windows.filter((one) => one.name !== kept.name), kept]
    .sort((a, b) => a.name.localeCompare(b.name, 'en'))
    .slice(0, MOST_WINDOWS);
}

function readNamedWindow(value: unknown): NamedWindow | null {
  if (!isFields(value) || value.v !== 1 || !isFields(value.window)) return null;
  const { name } = value;
  if (typeof name !== 'string' || name.trim() === '' || name.length > LONGEST_WINDOW_NAME)
    return null;
  const window = readWindow(value.window);
  return window === null || hasRefusal(windowProblems(window)) ? null : { v: 1, name, window };
}

function readWindow(fields: Fields): Window | null {
  const lifter = lifterKinds.find((kind): kind is LifterKind => kind === fields.lifter);
  if (lifter === undefined) return null;
  const figure = (value: unknown) => (typeof value === 'number' ? value : Number.NaN);
  return {
    lifter,
    plungerTravelMm: figure(fields.plungerTravelMm),
    keepOutTopMm: figure(fields.keepOutTopMm),
    keepOutBottomMm: figure(fields.keepOutBottomMm),
    usableMinMm: figure(fields.usableMinMm),
    usableMaxMm: figure(fields.usableMaxMm),
    preferredMinMm: figure(fields.preferredMinMm),
    preferredMaxMm: figure(fields.preferredMaxMm),
  };
}

function isFields(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
