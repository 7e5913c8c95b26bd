import { ensureBrowser, findBrowser } from './browserProgram.mjs';

/** @type {import('./browserProgram.mjs').BrowserProgram} */
const program = {
  title: 'Chromium',
  setting: 'CHROMIUM_PATH',
  names: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'],
  elsewhere: [
    '/snap/bin/chromium',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  ],
  debian: 'chromium',
};

export const findChromium = () => findBrowser(program);
export const ensureChromium = () => ensureBrowser(program);
