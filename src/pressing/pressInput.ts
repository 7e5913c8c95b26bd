/**
 * One key event, or time passing. `at` is the clock's milliseconds.
 * `code` is a keyboard `code`; another device names its own (`Gamepad1`).
 */
export type PressInput =
  | {
      readonly type: 'down' | 'up';
      readonly code: string;
      readonly repeat: boolean;
      readonly at: number;
    }
  | { readonly type: 'time' | 'blur'; readonly at: number };
