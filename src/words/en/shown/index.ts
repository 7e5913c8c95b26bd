/** Strings of the screens, by the thing they name. */
export const shown = {};
