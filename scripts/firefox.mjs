import { ensureBrowser, findBrowser } from './browserProgram.mjs';

/** @type {import('./browserProgram.mjs').BrowserProgram} */
const program = {
  title: 'Firefox',
  setting: 'FIREFOX_PATH',
  names: ['firefox-esr', 'firefox'],
  elsewhere: [
    '/snap/bin/firefox',
    '/Applications/Firefox.app/Contents/MacOS/firefox',
    'C:\\Program Files\\Mozilla Firefox\\firefox.exe',
  ],
  debian: 'firefox-esr',
};

export const findFirefox = () => findBrowser(program);
export const ensureFirefox = () => ensureBrowser(program);
