// The built app served to the system's browser, as somebody at home would have it: its own files and no network.

import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';
import { serve } from '../../scripts/serve.mjs';

/** The system's Chromium, or the one named in the environment variable CHROMIUM. */
export function launchBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: process.env['CHROMIUM'] ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu', '--disable-quic', '--no-first-run', '--disable-background-networking', '--disable-component-update', '--disable-sync'],
  });
}

/** The built app in dist/app (or the folder named in NEEDLEFALL_APP), served as `npm start` does, on any free port. */
export function serveApp(): Promise<{ readonly address: string; readonly close: () => Promise<void> }> {
  return serve(process.env['NEEDLEFALL_APP'] ?? fileURLToPath(new URL('../../dist/app', import.meta.url)), 0);
}
