// `npm start`: everything from a fresh copy to the app in the browser.
// `npm start -- --port 5000` begins at another port.

import { join } from 'node:path';
import { buildWhenNeeded } from './build.mjs';
import { serve } from './serve.mjs';
import { ROOT, installPackages, stop } from './set-up.mjs';

const at = process.argv.indexOf('--port');
const port = at === -1 ? 4173 : Number(process.argv[at + 1]);
if (!Number.isInteger(port) || port < 0 || port > 65535) stop('--port takes a number from 0 to 65535.');

installPackages();
buildWhenNeeded();
const { address } = await serve(join(ROOT, 'dist/app'), port).catch((error) => stop(`The app could not be served: ${error.message}`));
console.log(`Needlefall is at ${address}\nIt works on this computer only. Press Ctrl+C to end it.`);
