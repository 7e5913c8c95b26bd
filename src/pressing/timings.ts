/** Two edges of one key closer than this are one press whose contact bounced. */
export const DEBOUNCE_MS = 80;

/** A hold let go from here on asks for the next stage. */
export const NEXT_STAGE_MS = 600;

/** A hold let go from here on takes back. */
export const TAKE_BACK_MS = 1500;

/** A hold let go later than this does nothing. */
export const HOLD_LIMIT_MS = 3000;

/** How long a digit waits for a second one. */
export const SECOND_DIGIT_MS = 700;
