import { createHash } from 'node:crypto';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { largestFileText } from '../../../core/contract/attachmentsShape.ts';
import { largestBody } from '../../../electron/loopback/callRoute.ts';
import { startLoopback, type Loopback } from '../../../electron/loopback/server.ts';
import { freshFolder, record } from '../archive/sample.ts';
import { freshService } from '../service/sample.ts';

interface Reply {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

let loopback: Loopback;
let port: number;

beforeEach(async () => {
  const folder = freshFolder();
  const pageFolder = path.join(folder, 'page');
  mkdirSync(path.join(pageFolder, 'assets'), { recursive: true });
  writeFileSync(path.join(pageFolder, 'index.html'), '<title>page</title>');
  writeFileSync(path.join(pageFolder, 'assets/main.js'), 'export {}');
  writeFileSync(path.join(folder, 'secret.json'), '"outside"');
  symlinkSync(path.join(folder, 'secret.json'), path.join(pageFolder, 'link.json'));
  loopback = await startLoopback({ service: freshService(), pageFolder });
  port = Number(new URL(loopback.url).port);
});

afterEach(() => loopback.close());

/** Sends a request as it stands: node:http lets Host and the raw path be anything. */
function send(
  method: string,
  target: string,
  headers: Record<string, string> = {},
  body = '',
): Promise<Reply> {
  return new Promise((done, failed) => {
    const sent = request({ host: '127.0.0.1', port, method, path: target, headers });
    sent.on('error', failed).on('response', async (response) => {
      let text = '';
      for await (const part of response) text += String(part);
      done({ status: response.statusCode!, headers: response.headers, body: text });
    });
    sent.end(body);
  });
}

const entryOf = (url: string) => url.slice(url.indexOf('/?'));

async function enter(): Promise<string> {
  const { headers } = await send('GET', entryOf(loopback.url));
  return String(headers['set-cookie']).split(';')[0]!;
}

const origin = () => `http://127.0.0.1:${port}`;

async function call(name: string, args: unknown, headers: Record<string, string> = {}) {
  const cookie = await enter().catch(() => '');
  const own = { cookie, origin: origin(), 'content-type': 'application/json' };
  return send('POST', `/call/${name}`, { ...own, ...headers }, JSON.stringify(args));
}

describe('the way in', () => {
  it('is a secret that gives a cookie which scripts and other sites cannot use', async () => {
    const { status, headers } = await send('GET', entryOf(loopback.url));
    expect(status).toBe(303);
    expect(headers['location']).toBe('/');
    expect(String(headers['set-cookie'])).toMatch(
      new RegExp(`^borefolio-${port}=[\\w-]{43}; HttpOnly; SameSite=Strict; Path=/$`),
    );
  });

  it('opens once', async () => {
    await send('GET', entryOf(loopback.url));
    expect((await send('GET', entryOf(loopback.url))).status).toBe(403);
    expect((await send('GET', entryOf(loopback.newUrl()))).status).toBe(303);
  });

  it('is shut to a wrong secret, to none, and to a wrong cookie', async () => {
    expect((await send('GET', '/?k=wrong')).status).toBe(403);
    expect((await send('GET', '/')).status).toBe(403);
    expect((await send('GET', '/', { cookie: `borefolio-${port}=wrong` })).status).toBe(403);
    expect((await send('GET', '/events')).status).toBe(403);
  });

  it('is shut under another host’s name, secret or not', async () => {
    const host = { host: `borefolio.example:${port}` };
    expect((await send('GET', entryOf(loopback.url), host)).status).toBe(403);
    const cookie = await enter();
    expect((await send('GET', '/', { cookie, host: `localhost:${port}` })).status).toBe(403);
    expect((await send('GET', '/', { cookie })).status).toBe(200);
  });

  it('is shut to calls from another origin, or from none', async () => {
    const cookie = await enter();
    const json = { cookie, 'content-type': 'application/json' };
    const list = (headers: Record<string, string>) =>
      send('POST', '/call/wells.list', { ...json, ...headers }, '{}');
    expect((await list({ origin: 'http://borefolio.example' })).status).toBe(403);
    expect((await list({ origin: 'null' })).status).toBe(403);
    expect((await list({})).status).toBe(403);
    expect((await list({ origin: origin() })).status).toBe(200);
  });
});

describe('the page', () => {
  it('comes with a policy that lets nothing else in', async () => {
    const { headers, body } = await send('GET', '/', { cookie: await enter() });
    expect(body).toBe('<title>page</title>');
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self'");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(headers['x-content-type-options']).toBe('nosniff');
  });

  it('comes from its folder and from nowhere else', async () => {
    const cookie = await enter();
    const get = async (target: string) => (await send('GET', target, { cookie })).status;
    expect(await get('/assets/main.js')).toBe(200);
    for (const target of [
      '/../secret.json',
      '/%2e%2e/secret.json',
      '/assets/..%2f..%2fsecret.json',
      '/assets/..%5c..%5csecret.json',
      '/link.json',
      '//etc/passwd',
      '/%00.js',
      '/%zz.js',
      '/assets',
      '/none.js',
    ])
      expect([target, await get(target)]).toEqual([target, 404]);
  });

  it('is only read', async () => {
    const cookie = await enter();
    expect((await send('PUT', '/index.html', { cookie, origin: origin() })).status).toBe(405);
    expect((await send('POST', '/', { cookie, origin: origin() })).status).toBe(405);
  });
});

describe('a call', () => {
  it('is answered from the archive, end to end', async () => {
    const created = await call('wells.create', { record });
    expect(created.status).toBe(200);
    expect(JSON.parse(created.body)).toMatchObject({ ok: true, value: { revision: 1 } });
  });

  it('that is unknown or ill-formed is answered by a sentence', async () => {
    expect(JSON.parse((await call('wells.burn', {})).body)).toMatchObject({
      error: { code: 'unknownCall' },
    });
  });

  it('must be JSON and not too large', async () => {
    const cookie = await enter();
    const own = { cookie, origin: origin() };
    const post = (type: string, body: string) =>
      send('POST', '/call/wells.list', { ...own, 'content-type': type }, body);
    expect((await post('text/plain', '{}')).status).toBe(415);
    expect((await post('application/json', '{')).status).toBe(400);
    const large = await post('application/json', `{"search":"${'x'.repeat(largestBody)}"}`);
    expect(large.status).toBe(413);
  });
});

describe('a file', () => {
  it('may be larger than any other call', async () => {
    const whole = Buffer.alloc(largestBody);
    whole.write('%PDF-1.7');
    const kept = await call('attachments.put', { data: whole.toString('base64') });
    expect(JSON.parse(kept.body)).toMatchObject({ ok: true, value: { bytes: whole.length } });
  });

  it('is refused when it is larger than an archive takes', async () => {
    const further = 'A'.repeat(largestFileText + largestBody);
    const refusal = await call('attachments.put', { data: further });
    expect(refusal.status).toBe(413);
    expect(JSON.parse(refusal.body)).toMatchObject({ error: { code: 'tooLarge' } });
  });
});

describe('a PDF just made', () => {
  async function made() {
    const cookie = await enter();
    const valueOf = async (name: string, args: unknown) =>
      JSON.parse((await call(name, args, { cookie })).body).value;
    const { id } = await valueOf('wells.create', { record });
    const { fileName, pdf } = await valueOf('papers.asBuilt', { id, paper: 'A4' });
    const bytes = Buffer.from(pdf, 'base64');
    const target = `/made/${createHash('sha256').update(bytes).digest('hex')}`;
    return { cookie, bytes, fileName: String(fileName), target };
  }

  it('is shown by the browser itself, under its name, and by nothing that guesses its kind', async () => {
    const { cookie, bytes, fileName, target } = await made();
    const shown = await fetch(`${origin()}${target}`, { headers: { cookie } });
    expect(shown.status).toBe(200);
    expect(Object.fromEntries(shown.headers)).toMatchObject({
      'content-type': 'application/pdf',
      'content-disposition': `inline; filename*=UTF-8''${encodeURIComponent(fileName)}`,
      'x-content-type-options': 'nosniff',
      'x-frame-options': 'DENY',
      'cache-control': 'no-store',
      'content-security-policy': "frame-ancestors 'none'",
    });
    expect(Buffer.compare(Buffer.from(await shown.arrayBuffer()), bytes)).toBe(0);
  });

  it('is shut without the cookie, under another host’s name and to another origin', async () => {
    const { cookie, target } = await made();
    expect((await send('GET', target)).status).toBe(403);
    const host = `localhost:${port}`;
    expect((await send('GET', target, { cookie, host })).status).toBe(403);
    const elsewhere = 'http://borefolio.example';
    expect((await send('GET', target, { cookie, origin: elsewhere })).status).toBe(403);
  });

  it('is all that lies there', async () => {
    const { cookie, target } = await made();
    for (const other of ['/made/', '/made/a.pdf', `/made/${'0'.repeat(64)}`, `${target}/..`])
      expect([other, (await send('GET', other, { cookie })).status]).toEqual([other, 404]);
  });
});

describe('the events', () => {
  it('reach an open page when a well changes', async () => {
    const cookie = await enter();
    const stream = await fetch(`${origin()}/events`, { headers: { cookie } });
    const reader = stream.body!.pipeThrough(new TextDecoderStream()).getReader();
    expect((await reader.read()).value).toBe(':\n\n');
    const own = { cookie, origin: origin(), 'content-type': 'application/json' };
    await send('POST', '/call/wells.create', own, JSON.stringify({ record }));
    const event = (await reader.read()).value!;
    expect(JSON.parse(event.replace(/^data: /, ''))).toMatchObject({
      name: 'well.changed',
      data: { revision: 1 },
    });
    await reader.cancel();
  });
});
