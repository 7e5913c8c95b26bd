/**
 * Whether the offline ear is built in. Its recogniser is WebAssembly, which a page may run only where
 * the content security policy says so; without it nothing of the kind is allowed.
 */
export const offlineEarIsBuiltIn = true;

/**
 * Where everything the page runs, draws and fetches may come from: its own folder's origin.
 * @param {{ offlineEar: boolean }} what
 * @returns {string[]}
 */
function directives({ offlineEar }) {
  return [
    "default-src 'none'",
    `script-src 'self'${offlineEar ? " 'wasm-unsafe-eval'" : ''}`,
    "style-src 'self'",
    "img-src 'self'",
    "font-src 'self'",
    "connect-src 'self'",
    "worker-src 'self'",
    "manifest-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ];
}

/** The policy as a meta element, for static hosting without headers of one's own. */
export function metaPolicy(what = { offlineEar: offlineEarIsBuiltIn }) {
  return directives(what).join('; ');
}

/** Services of the browser the page uses itself; every other it could be tricked into is off. */
const used = ['microphone', 'screen-wake-lock', 'gamepad'];
const unused = [
  'accelerometer',
  'autoplay',
  'camera',
  'display-capture',
  'encrypted-media',
  'fullscreen',
  'geolocation',
  'gyroscope',
  'hid',
  'idle-detection',
  'local-fonts',
  'magnetometer',
  'midi',
  'payment',
  'picture-in-picture',
  'publickey-credentials-get',
  'serial',
  'usb',
  'xr-spatial-tracking',
];

/**
 * The headers the build is served with.
 * @returns {Record<string, string>}
 */
export function servedHeaders(what = { offlineEar: offlineEarIsBuiltIn }) {
  return {
    // What a frame around the page may do can't be said in a meta element.
    'Content-Security-Policy': [...directives(what), "frame-ancestors 'none'"].join('; '),
    'Permissions-Policy': [
      ...used.map((name) => `${name}=(self)`),
      ...unused.map((name) => `${name}=()`),
    ].join(', '),
    'X-Content-Type-Options': 'nosniff',
    'Referrer-Policy': 'no-referrer',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
  };
}
