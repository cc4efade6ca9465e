// A small server for the built app: this machine only, files of one folder only, nothing written, nothing fetched.

import { createReadStream, existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, sep } from 'node:path';

/** @type {Record<string, string>} */
const KINDS = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.ttf': 'font/ttf',
  '.wasm': 'application/wasm',
  '.txt': 'text/plain; charset=utf-8',
  '.pdf': 'application/pdf',
};

const STRICT = "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; font-src 'self'; connect-src 'self'; worker-src 'self' blob:; object-src 'none'; base-uri 'none'; form-action 'none'";

/**
 * Serves a folder on 127.0.0.1, from a port upward until one is free. Port 0 takes any free one.
 * @param {string} folder
 * @param {number} [firstPort]
 * @returns {Promise<{ address: string, close: () => Promise<void> }>}
 */
export async function serve(folder, firstPort = 4173) {
  const root = realpathSync(folder);
  const headers = { ...SAFE, 'Content-Security-Policy': policyOf(root) };
  const server = createServer((request, response) => answer(root, headers, request, response));
  const port = await listen(server, firstPort);
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

const SAFE = {
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
};

/**
 * The page states its own policy, so that it also holds elsewhere; the header says the same, and what only a header can.
 * @param {string} root
 */
function policyOf(root) {
  const page = join(root, 'index.html');
  const stated = existsSync(page) ? /http-equiv="Content-Security-Policy"\s+content="([^"]*)"/.exec(readFileSync(page, 'utf8'))?.[1] : undefined;
  return `${stated ?? STRICT}; frame-ancestors 'none'`;
}

/**
 * @param {string} root
 * @param {Record<string, string>} headers
 * @param {import('node:http').IncomingMessage} request
 * @param {import('node:http').ServerResponse} response
 */
function answer(root, headers, request, response) {
  /** @param {number} status @param {string} text */
  const refuse = (status, text) => {
    response.writeHead(status, { ...headers, 'Content-Type': 'text/plain; charset=utf-8' });
    response.end(request.method === 'HEAD' ? undefined : `${text}\n`);
  };
  // Another site's name that was made to point here is not answered.
  if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? '')) return refuse(421, 'Only 127.0.0.1 is answered here.');
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, 'Files can only be read here.');
  const file = fileFor(root, request.url ?? '/');
  if (file === undefined) return refuse(404, 'There is no such file.');
  const hashed = /[-.][A-Za-z0-9_-]{8}\.[a-z0-9]+$/.test(file) && file.includes(`${sep}assets${sep}`);
  response.writeHead(200, {
    ...headers,
    'Content-Type': KINDS[extname(file).toLowerCase()] ?? 'application/octet-stream',
    'Content-Length': statSync(file).size,
    'Cache-Control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
  });
  if (request.method === 'HEAD') return response.end();
  createReadStream(file).on('error', () => response.destroy()).pipe(response);
}

/**
 * The file a request names, if it is one and lies in the folder, links followed.
 * @param {string} root
 * @param {string} url
 */
function fileFor(root, url) {
  try {
    const path = decodeURIComponent(url.split(/[?#]/)[0] ?? '');
    if (!path.startsWith('/') || path.includes('\0')) return undefined;
    const file = realpathSync(join(root, path.endsWith('/') ? `${path}index.html` : path));
    return file.startsWith(root + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @returns {Promise<number>}
 */
function listen(server, port) {
  return new Promise((done, failed) => {
    server.once('error', (/** @type {NodeJS.ErrnoException} */ error) => {
      if (error.code === 'EADDRINUSE' && port < 65535) listen(server, port + 1).then(done, failed);
      else failed(error);
    });
    server.listen(port, '127.0.0.1', () => {
      server.removeAllListeners('error');
      const address = server.address();
      done(typeof address === 'object' && address ? address.port : port);
    });
  });
}
