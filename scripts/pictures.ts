// Takes the picture the README shows, of the built app with its example, in the system's Chromium.

import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { atRest, openApp } from '../test/browser/app.ts';
import { launchBrowser, serveApp } from '../test/support/browser.ts';
import { buildWhenNeeded } from './build.mjs';

const folder = fileURLToPath(new URL('../docs/pictures/', import.meta.url));

buildWhenNeeded();
mkdirSync(folder, { recursive: true });
const [browser, server] = await Promise.all([launchBrowser(), serveApp()]);
const app = await openApp(browser, server.address, { viewport: { width: 1440, height: 900 }, colorScheme: 'light' });
await atRest(app.page);
await app.page.screenshot({ path: `${folder}table.png`, animations: 'disabled' });
await browser.close();
await server.close();
