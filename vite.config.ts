import react from '@vitejs/plugin-react';
import { createHash } from 'node:crypto';
import { type Plugin, defineConfig } from 'vite';
import { OPEN_ROOMS, ROOM_NAMES } from './src/session/rooms.ts';

// What the page may load: its own files and nothing else. The server sends the same as a header; here it holds even when
// the built files are served by something else. `frame-ancestors` only works as a header.
const contentSecurityPolicyFor = (html: string) => [
  "default-src 'none'",
  `script-src 'self'${hashesOf(html, 'script')}`,
  `style-src 'self'${hashesOf(html, 'style')}`,
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

export default defineConfig({
  root: 'src/app',
  base: './',
  plugins: [react(), englishOnly(), roomsOfPage(), contentSecurityPolicy()],
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Every asset is a file of its own: data addresses would need a looser policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    // What the first picture needs comes in one file: on a slow line, each further one would wait its turn.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] } } },
    chunkSizeWarningLimit: 1600,
  },
  worker: { format: 'es' },
  server: { host: '127.0.0.1' },
});

/** Puts the policy into the built page; the development server needs inline styles, so it goes without. */
function contentSecurityPolicy(): Plugin {
  return {
    name: 'content-security-policy',
    apply: 'build',
    // As text, since the tag helper would write the quotes as entities and the server reads the policy from the page.
    transformIndexHtml: {
      order: 'post',
      handler: (html) => html.replace('<meta charset="utf-8" />', `$&\n    <meta http-equiv="Content-Security-Policy" content="${contentSecurityPolicyFor(html)}" />`),
    },
  };
}

/** What stands in the page itself is let through by what it says, to the letter (CSP Level 3, 2.3.1, hash-source). */
function hashesOf(html: string, element: 'script' | 'style'): string {
  const inner = [...html.matchAll(new RegExp(`<${element}>([^]*?)</${element}>`, 'g'))].map(([, text]) => text!);
  return inner.map((text) => ` 'sha256-${createHash('sha256').update(text).digest('base64')}'`).join('');
}

/** The rooms stand in the page from the first moment, under the names the app knows them by. */
function roomsOfPage(): Plugin {
  const links = OPEN_ROOMS.map((room) => `<a href="#${room}" data-name="${ROOM_NAMES[room]}">${ROOM_NAMES[room]}</a>`).join('');
  return { name: 'rooms-of-page', transformIndexHtml: (html) => html.replace('<!-- rooms -->', links) };
}

/** The interface library speaks 34 languages and the app one; the others are left at home. */
function englishOnly(): Plugin {
  return {
    name: 'english-only',
    load: (id) => (/\/react-(aria|stately)\/dist\/.*\/intl\/.*\/(?!en-US)[a-z]{2}-[A-Z]{2}\.m?js$/.test(id) ? 'export default {};' : undefined),
  };
}
