// npm start: installs if needed, builds, serves the build and prints the address.
import { networkInterfaces } from 'node:os';
import { parseArgs } from 'node:util';
import { ensureInstalled } from './installed.mjs';
import { root } from './root.mjs';

const usage = `Usage: npm start [-- --lan] [--port NUMBER]
  --lan    listen on every address of this machine, not on this machine alone
  --port   the port to serve on (4173 unless told; the next free one if it is taken)`;

const lanWarning = `
Open to other machines. Over plain http from another machine the browser gives no
  microphone    nothing spoken is heard; keys, pedals and touch still count
  wake lock     the screen may go dark in the middle of a valve
  locks         nothing stops two windows from writing to the same job: keep to one
  service worker   the page does not open without this server
All four work on this machine itself, or where the build in dist/ is served over https.`;

function readArguments() {
  try {
    const { values } = parseArgs({
      options: {
        lan: { type: 'boolean', default: false },
        port: { type: 'string', default: '4173' },
      },
    });
    const port = Number(values.port);
    if (Number.isInteger(port) && port >= 0 && port <= 65535) return { lan: values.lan, port };
    console.error(`--port wants a whole number from 0 to 65535, not '${values.port}'.`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : String(error));
  }
  console.error(usage);
  process.exit(2);
}

/** @param {number} port */
function otherAddresses(port) {
  return Object.values(networkInterfaces())
    .flatMap((list) => list ?? [])
    .filter((address) => address.family === 'IPv4' && !address.internal)
    .map((address) => `http://${address.address}:${port}/`);
}

const { lan, port } = readArguments();
ensureInstalled();
const { build, preview } = await import('vite');
await build({ root, logLevel: 'warn' });
const server = await preview({
  root,
  logLevel: 'warn',
  preview: { host: lan ? '0.0.0.0' : '127.0.0.1', port },
});
const address = server.httpServer.address();
const served = typeof address === 'object' && address ? address.port : port;

console.log(`Turncaller is at http://127.0.0.1:${served}/`);
if (lan) {
  for (const other of otherAddresses(served)) console.log(`and at ${other}`);
  console.log(lanWarning);
}
console.log('Ctrl-C stops it.');
