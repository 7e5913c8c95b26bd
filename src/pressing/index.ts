/**
 * pressing: keys, pedals and pads become presses. Lives here: what each key means, the pure
 * reducers of timestamped key events (hold, debounce, digits, learning a key), and the thin binding
 * to a window's key events. May not be here: what a press does to a count, and the words said.
 */
export type { KeyBinding, KeyBindingParts } from './bindKeys';
export { bindKeys } from './bindKeys';
export type { LearningParts } from './bindLearning';
export { bindLearning } from './bindLearning';
export { commandFor, withinStep } from './commandFor';
export type { DigitMeaning, KeyMeaning, Keymap, Meaning, Pedal } from './keymap';
export { defaultKeymap, meaningOf } from './keymap';
export { keymapProblems, meaningName } from './keymapProblems';
export { keyName } from './keyName';
export type { StripKeys, StripMeaning } from './keyStrip';
export { stripOf } from './keyStrip';
export type { LearnOutcome } from './learnReducer';
export { learn } from './learnReducer';
export type { Learned, LearnState, LearnWord } from './learnState';
export { startLearning } from './learnState';
export type { HoldReached, Press, PressCue } from './press';
export type { PressContext } from './pressContext';
export type { PressInput } from './pressInput';
export { reduce } from './pressReducer';
export type { PressRunner, PressRunnerParts } from './pressRunner';
export { runPresses } from './pressRunner';
export type { PressOutcome, PressState } from './pressState';
export { initialPressState } from './pressState';
export { type KeptKeys, readKeymap } from './readKeymap';
export { needsStageKey, withKey, withListen, withPedal } from './setKeys';
