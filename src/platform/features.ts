/** A service of the browser the app looks for. */
export interface BrowserFeature {
  readonly id: string;
  /** As the screen names it. */
  readonly name: string;
  /** The expression that tells, as the docs print it. */
  readonly how: string;
  readonly detect: (page: Window) => boolean;
  /** What is lost without it. */
  readonly lost: string;
  /** What the app says or shows then. */
  readonly said: string;
}

const has = (thing: object, name: string): boolean => name in thing;

/** Every service the app looks for, in the order of how much is lost without it. */
export const browserFeatures: readonly BrowserFeature[] = [
  {
    id: 'storage',
    name: 'Storage on this device',
    how: "'indexedDB' in window",
    detect: (page) => has(page, 'indexedDB'),
    lost: 'Nothing can be kept: every count is gone when the page closes.',
    said: '‘Not kept’, as a standing alarm.',
  },
  {
    id: 'locks',
    name: 'One window writes',
    how: "'locks' in navigator",
    detect: (page) => has(page.navigator, 'locks'),
    lost: 'Two windows with the same job open are not told apart until one of them writes over the other’s place; that write is refused and the log read again.',
    said: 'Shown here. Open a job in one window only.',
  },
  {
    id: 'audio',
    name: 'Ticks',
    how: "'AudioContext' in window",
    detect: (page) => has(page, 'AudioContext'),
    lost: 'No tick when a count is taken; captions and the dial still show it.',
    said: 'Shown here.',
  },
  {
    id: 'voice',
    name: 'A voice',
    how: "'speechSynthesis' in window, and at least one voice installed",
    detect: (page) => has(page, 'speechSynthesis'),
    lost: 'Nothing is spoken; ticks and captions carry on.',
    said: '‘No voice on this device: ticks and captions carry on’, on the bench.',
  },
  {
    id: 'ear',
    name: 'The browser’s own speech recognition',
    how: "'SpeechRecognition' in window, or 'webkitSpeechRecognition' in window; whether it works is found out when it is opened",
    detect: (page) => has(page, 'SpeechRecognition') || has(page, 'webkitSpeechRecognition'),
    lost: 'The ear that needs no network is used where the browser can run it (AudioWorklet, WebAssembly and a secure address); where it can’t, nothing can be called by voice, and pedal, keys and touch count.',
    said: 'Where neither ear can run: ‘This browser does not recognise speech, no ear. Use the pedal or the keys.’ when the ear is opened; the service’s own failure is named the same way, with the count.',
  },
  {
    id: 'microphone',
    name: 'A microphone',
    how: "'mediaDevices' in navigator",
    detect: (page) => has(page.navigator, 'mediaDevices'),
    lost: 'The room’s noise is not measured. Whether there is a microphone, and it is allowed, is found out when the ear is opened.',
    said: '‘No microphone found’ or ‘The microphone is not allowed’, with the count, and to use the pedal.',
  },
  {
    id: 'gamepad',
    name: 'Gamepad buttons',
    how: "'getGamepads' in navigator",
    detect: (page) => has(page.navigator, 'getGamepads'),
    lost: 'A gamepad’s buttons do nothing; keys, pedals and presenters that act as a keyboard do.',
    said: 'Shown here.',
  },
  {
    id: 'wake lock',
    name: 'Keeping the screen on',
    how: "'wakeLock' in navigator",
    detect: (page) => has(page.navigator, 'wakeLock'),
    lost: 'The screen may go dark while you work; counting by key goes on when it is woken.',
    said: 'Shown here. Set the device not to sleep.',
  },
  {
    id: 'secure',
    name: 'A secure address',
    how: 'window.isSecureContext',
    detect: (page) => page.isSecureContext,
    lost: 'Over plain http from another machine the browser gives no microphone, no wake lock, no locks and no offline use.',
    said: 'Shown here, and by `npm start -- --lan` when it starts.',
  },
  {
    id: 'windows',
    name: 'Windows told of each other',
    how: "'BroadcastChannel' in window",
    detect: (page) => has(page, 'BroadcastChannel'),
    lost: 'A second window that looks on does not follow the count until it is reloaded.',
    said: 'Shown here.',
  },
  {
    id: 'offline',
    name: 'Opening without a network',
    how: "'serviceWorker' in navigator",
    detect: (page) => has(page.navigator, 'serviceWorker'),
    lost: 'The app opens only while its server answers. A page that is open goes on counting without it.',
    said: 'Shown here, under ‘Without a network’.',
  },
  {
    id: 'lasting storage',
    name: 'Storage that is not cleared',
    how: "'persist' in navigator.storage",
    detect: (page) => has(page.navigator, 'storage') && has(page.navigator.storage, 'persist'),
    lost: 'A browser short of space, or unused for long, may clear old jobs. Export those worth keeping.',
    said: 'Shown here. The browser is asked once the first reading is kept, and its answer stands under ‘For how long’.',
  },
];
