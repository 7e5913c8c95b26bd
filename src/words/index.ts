/**
 * Words: language as data. What is heard and what is said in English, and numbers both ways.
 * Pure; it imports only valvetrain and counting. No sound, no screens, no decisions live here.
 */
export * from './en/numbers';
