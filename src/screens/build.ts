/** Which build this is, as main.tsx hands it to the screens. */
export interface Build {
  readonly version: string;
  readonly commit: string;
}
