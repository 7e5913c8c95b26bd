/**
 * Asks for a whole number within inclusive bounds.
 * Throws RangeError for anything else, NaN and Infinity included.
 */
export function requireWhole(value: number, min: number, max: number, name: string): void {
  if (!Number.isInteger(value) || value < min || value > max) {
    throw new RangeError(`${name} must be a whole number from ${min} to ${max}`);
  }
}

/**
 * Asks for a finite number within inclusive bounds.
 * Throws RangeError for anything else, NaN and Infinity included.
 */
export function requireBetween(value: number, min: number, max: number, name: string): void {
  if (!(value >= min && value <= max)) {
    throw new RangeError(`${name} must be a number from ${min} to ${max}`);
  }
}
