import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { serve } from '../scripts/serve.mjs';

interface Answer {
  readonly status: number;
  readonly headers: { readonly [name: string]: string | string[] | undefined };
  readonly body: string;
}

let folder: string;
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'needlefall-serve-'));
  mkdirSync(join(folder, 'app/assets'), { recursive: true });
  writeFileSync(join(folder, 'secret.txt'), 'not for the web');
  writeFileSync(join(folder, 'app/index.html'), `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'">hello`);
  writeFileSync(join(folder, 'app/assets/main-AbCd1234.js'), 'export {};');
  symlinkSync(join(folder, 'secret.txt'), join(folder, 'app/linked.txt'));
  server = await serve(join(folder, 'app'), 0);
});

afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

/** A request with its path sent as it is written, which a client that tidies addresses would not do. */
function get(path: string, options: { readonly method?: string; readonly host?: string } = {}): Promise<Answer> {
  const { hostname, port, host } = new URL(server.address);
  return new Promise((done, failed) => {
    request({ hostname, port, path, method: options.method ?? 'GET', headers: { host: options.host ?? host } }, (response) => {
      let body = '';
      response.setEncoding('utf8').on('data', (piece: string) => (body += piece));
      response.on('end', () => done({ status: response.statusCode ?? 0, headers: response.headers, body }));
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
