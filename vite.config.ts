import react from '@vitejs/plugin-react';
import { type Plugin, defineConfig } from 'vite';

// What the page may load: its own files and nothing else. The server sends the same as a header; here it holds even when
// the built files are served by something else. `frame-ancestors` only works as a header.
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
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
  plugins: [react(), englishOnly(), contentSecurityPolicy()],
  build: {
    outDir: '../../dist/app',
    emptyOutDir: true,
    target: 'es2022',
    // Every asset is a file of its own: data addresses would need a looser policy.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
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
    transformIndexHtml: (html) =>
      html.replace('<meta charset="utf-8" />', `$&\n    <meta http-equiv="Content-Security-Policy" content="${CONTENT_SECURITY_POLICY}" />`),
  };
}

/** The interface library speaks 34 languages and the app one; the others are left at home. */
function englishOnly(): Plugin {
  return {
    name: 'english-only',
    load: (id) => (/\/react-(aria|stately)\/dist\/.*\/intl\/.*\/(?!en-US)[a-z]{2}-[A-Z]{2}\.m?js$/.test(id) ? 'export default {};' : undefined),
  };
}
