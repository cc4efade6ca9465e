import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { brotliDecompressSync, gunzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../scripts/serve.mjs';

/** Enough text to be worth packing. */
const LONG = 'export const line = "needle";\n'.repeat(200);

interface Answer {
  readonly status: number;
  readonly headers: { readonly [name: string]: string | string[] | undefined };
  readonly body: string;
  readonly bytes: Buffer;
}

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'needlefall-serve-'));
  mkdirSync(join(folder, 'app/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for the web');
  writeFileSync(join(folder, 'app/index.html'), `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'">hello`);
  writeFileSync(join(folder, 'app/assets/main-AbCd1234.js'), 'export {};');
  writeFileSync(join(folder, 'app/assets/long-AbCd1234.js'), LONG);
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'app/linked.txt'));
  server = await serve(join(folder, 'app'), 0);
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** A request with its path sent as it is written, which a client that tidies addresses would not do. */
function get(path: string, options: { readonly method?: string; readonly host?: string; readonly headers?: { readonly [name: string]: string } } = {}): Promise<Answer> {
  const { hostname, port, host } = new URL(server.address);
  return new Promise((done, failed) => {
    request({ hostname, port, path, method: options.method ?? 'GET', headers: { ...options.headers, host: options.host ?? host } }, (response) => {
      const pieces: Buffer[] = [];
      response.on('data', (piece: Buffer) => pieces.push(piece));
      response.on('end', () => {
        const bytes = Buffer.concat(pieces);
        done({ status: response.statusCode ?? 0, headers: response.headers, body: bytes.toString('utf8'), bytes });
      });
    })
      .on('error', failed)
      .end();
  });
}

describe('the local server', () => {
  it('gives the page, with the policy it states', async () => {
    const page = await get('/');
    expect(page.status).toBe(200);
    expect(page.body).toContain('hello');
    expect(page.headers['content-type']).toBe('text/html; charset=utf-8');
    expect(page.headers['content-security-policy']).toBe("default-src 'none'; script-src 'self'; frame-ancestors 'none'");
    expect(page.headers['x-content-type-options']).toBe('nosniff');
    expect(page.headers['cache-control']).toBe('no-cache');
  });

  it('gives scripts as scripts, and lets hashed files be kept', async () => {
    const script = await get('/assets/main-AbCd1234.js?v=1');
    expect(script.headers['content-type']).toBe('text/javascript; charset=utf-8');
    expect(script.headers['cache-control']).toContain('immutable');
  });

  it('packs text for those who take it packed, the same text for all', async () => {
    const path = '/assets/long-AbCd1234.js';
    const plain = await get(path);
    expect(plain.headers['content-encoding']).toBeUndefined();
    expect(plain.body).toBe(LONG);
    const br = await get(path, { headers: { 'accept-encoding': 'gzip, deflate, br' } });
    expect(br.headers['content-encoding']).toBe('br');
    expect(br.bytes.length).toBeLessThan(LONG.length / 10);
    expect(brotliDecompressSync(br.bytes).toString()).toBe(LONG);
    const gz = await get(path, { headers: { 'accept-encoding': 'gzip, br;q=0' } });
    expect(gz.headers['content-encoding']).toBe('gzip');
    expect(gunzipSync(gz.bytes).toString()).toBe(LONG);
    for (const answer of [plain, br, gz]) expect(answer.headers['vary']).toBe('Accept-Encoding');
    expect(Number(br.headers['content-length'])).toBe(br.bytes.length);
  });

  it('sends a file again only when it has changed', async () => {
    const first = await get('/');
    const etag = first.headers['etag'] as string;
    expect((await get('/', { headers: { 'if-none-match': etag } })).status).toBe(304);
    expect((await get('/', { headers: { 'if-none-match': '"another"' } })).status).toBe(200);
    writeFileSync(join(folder, 'app/assets/long-AbCd1234.js'), `${LONG}//`);
    const packed = await get('/assets/long-AbCd1234.js', { headers: { 'accept-encoding': 'br' } });
    expect(brotliDecompressSync(packed.bytes).toString()).toBe(`${LONG}//`);
  });

  it.each(['/../secret.txt', '/%2e%2e/secret.txt', '/..%2fsecret.txt', '/assets/../../secret.txt', '/linked.txt', '//etc/passwd', '/%00', '/%E0%A4%A', '/assets', '/nothing'])('gives nothing for %s', async (path) => {
    const answer = await get(path);
    expect(answer.status).toBe(404);
    expect(answer.body).not.toContain('not for the web');
  });

  it('only reads, and only answers to its own name', async () => {
    expect((await get('/', { method: 'POST' })).status).toBe(405);
    expect((await get('/', { host: 'quilts.example' })).status).toBe(421);
    const head = await get('/', { method: 'HEAD' });
    expect(head.status).toBe(200);
    expect(head.body).toBe('');
  });

  it('takes the next port when one is taken', async () => {
    const first = Number(new URL(server.address).port);
    const second = await serve(join(folder, 'app'), first);
    expect(Number(new URL(second.address).port)).toBeGreaterThan(first);
    await second.close();
  });
});
