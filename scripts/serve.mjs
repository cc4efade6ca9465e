// A small server for the built app: this machine only, files of one folder only, nothing written, nothing fetched.

import { createReadStream, existsSync, readFileSync, realpathSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, sep } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

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
  const { size, mtimeMs } = statSync(file);
  const kind = KINDS[extname(file).toLowerCase()] ?? 'application/octet-stream';
  const hashed = /[-.][A-Za-z0-9_-]{8}\.[a-z0-9]+$/.test(file) && file.includes(`${sep}assets${sep}`);
  const packing = PACKED.test(kind) && size >= LEAST_PACKED ? packingFor(request.headers['accept-encoding'] ?? '') : undefined;
  const state = `"${size.toString(36)}-${Math.round(mtimeMs).toString(36)}${packing ? `-${packing}` : ''}"`;
  const known = {
    ...headers,
    'Content-Type': kind,
    'Cache-Control': hashed ? 'public, max-age=31536000, immutable' : 'no-cache',
    ETag: state,
    ...(PACKED.test(kind) && { Vary: 'Accept-Encoding' }),
  };
  if ((request.headers['if-none-match'] ?? '').split(/,\s*/).includes(state)) {
    response.writeHead(304, known);
    return response.end();
  }
  if (packing === undefined) {
    response.writeHead(200, { ...known, 'Content-Length': size });
    if (request.method === 'HEAD') return response.end();
    return createReadStream(file).on('error', () => response.destroy()).pipe(response);
  }
  packed(file, state, packing).then(
    (body) => {
      response.writeHead(200, { ...known, 'Content-Encoding': packing, 'Content-Length': body.length });
      response.end(request.method === 'HEAD' ? undefined : body);
    },
    () => response.destroy(),
  );
}

/** What is sent packed: text, from a size on that makes it worth while. Fonts and pictures are packed already. */
const PACKED = /^(text\/|application\/(json|manifest\+json|wasm)|image\/svg)/;
const LEAST_PACKED = 1024;

/** @typedef {'br' | 'gzip'} Packing */

/**
 * The best packing a browser takes, if any; one it refuses with `q=0` is not taken.
 * @param {string} accepted
 * @returns {Packing | undefined}
 */
function packingFor(accepted) {
  const takes = new Set(accepted.toLowerCase().split(',').map((one) => one.trim()).filter((one) => !/;\s*q=0(\.0*)?$/.test(one)).map((one) => one.replace(/\s*;.*$/, '')));
  return takes.has('br') ? 'br' : takes.has('gzip') ? 'gzip' : undefined;
}

/** @type {Map<string, { state: string, body: Promise<Buffer> }>} */
const alreadyPacked = new Map();

/**
 * A file packed, once for each of its states.
 * @param {string} file
 * @param {string} state
 * @param {Packing} packing
 */
function packed(file, state, packing) {
  const key = `${packing} ${file}`;
  const before = alreadyPacked.get(key);
  if (before?.state === state) return before.body;
  const body = pack(readFileSync(file), packing);
  alreadyPacked.set(key, { state, body });
  return body;
}

const brotliIt = promisify(brotliCompress);
const gzipIt = promisify(gzip);

/**
 * @param {Buffer} text
 * @param {Packing} packing
 * @returns {Promise<Buffer>}
 */
function pack(text, packing) {
  return packing === 'br' ? brotliIt(text, { params: { [constants.BROTLI_PARAM_QUALITY]: 6, [constants.BROTLI_PARAM_SIZE_HINT]: text.length } }) : gzipIt(text);
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
