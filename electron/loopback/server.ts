import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { callPath, eventsPath, madePath } from '../../core/contract/host.ts';
import { contentPolicy, readPageFile } from '../files/pageFiles.ts';
import type { Service } from '../service/service.ts';
import { respondToCall } from './callRoute.ts';
import { streamEvents } from './eventStream.ts';
import { guardOf, type Guard } from './guard.ts';
import { inlineHeaders, madeFiles, type MadeFiles } from './madeFiles.ts';

export interface LoopbackOptions {
  readonly service: Service;
  /** Folder of the built page. */
  readonly pageFolder: string;
  /** Is told what the program threw at a call. */
  readonly report?: (name: string, thrown: unknown) => void;
}

export interface Loopback {
  /** Opens the program once, within this machine. */
  readonly url: string;
  /** A further address for one more browser. */
  newUrl(): string;
  close(): Promise<void>;
}

interface Desk extends Required<LoopbackOptions> {
  readonly guard: Guard;
  readonly made: MadeFiles;
}

const headers: Readonly<Record<string, string>> = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'X-Frame-Options': 'DENY',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
};

function sayText(response: ServerResponse, status: number, sentence: string): void {
  response.writeHead(status, { 'Content-Type': 'text/plain; charset=utf-8' }).end(sentence);
}

function forbid(response: ServerResponse): void {
  const sentence = 'This address opens Borefolio once. Start Borefolio again for a new one.';
  sayText(response, 403, sentence);
}

async function sendPage(folder: string, pathName: string, response: ServerResponse): Promise<void> {
  const file = await readPageFile(folder, pathName);
  if (!file) return sayText(response, 404, 'There is nothing here.');
  response.writeHead(200, { 'Content-Type': file.type }).end(file.bytes);
}

function sendMade(made: MadeFiles, hash: string, response: ServerResponse): void {
  const file = made.get(hash);
  if (!file) return sayText(response, 404, 'This PDF is no longer kept. Print the sheet again.');
  response.writeHead(200, inlineHeaders(file)).end(file.pdf);
}

async function answer(
  desk: Desk,
  request: IncomingMessage,
  response: ServerResponse,
  path: string,
) {
  const { status, answer } = await respondToCall(desk.service, request, path, desk.report);
  desk.made.keep(path.slice(callPath.length), answer);
  const body = JSON.stringify(answer);
  response.writeHead(status, { 'Content-Type': 'application/json; charset=utf-8' });
  response.end(body);
}

/** Order: made to us by our page, then an entry, then the cookie, then what is asked for. */
async function handle(desk: Desk, request: IncomingMessage, response: ServerResponse) {
  for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
  const { guard, made, service, pageFolder } = desk;
  const url = URL.parse(request.url ?? '', 'http://127.0.0.1');
  if (!url || !guard.isOurs(request)) return forbid(response);
  const entry = url.pathname === '/' ? url.searchParams.get('k') : null;
  const cookie = entry === null ? undefined : guard.cookieFor(entry);
  if (cookie) return void response.writeHead(303, { 'Set-Cookie': cookie, Location: '/' }).end();
  if (!guard.isKnown(request.headers)) return forbid(response);
  if (request.method === 'POST' && url.pathname.startsWith(callPath))
    return answer(desk, request, response, url.pathname);
  if (request.method !== 'GET') return sayText(response, 405, 'Only pages and calls are served.');
  if (url.pathname === eventsPath) return streamEvents(service, response);
  if (url.pathname.startsWith(madePath))
    return sendMade(made, url.pathname.slice(madePath.length), response);
  return sendPage(pageFolder, url.pathname, response);
}

/** Serves the page and its calls on a free port of 127.0.0.1; no other machine can reach it. */
export async function startLoopback(options: LoopbackOptions): Promise<Loopback> {
  const report = options.report ?? ((name, thrown) => console.error(name, thrown));
  const server = createServer();
  await new Promise<void>((listening, failed) => {
    server.once('error', failed).listen(0, '127.0.0.1', listening);
  });
  const { port } = server.address() as AddressInfo;
  const desk: Desk = { ...options, report, guard: guardOf(port), made: madeFiles() };
  server.on('request', (request, response) => {
    handle(desk, request, response).catch((thrown: unknown) => {
      report('request', thrown);
      if (!response.headersSent) sayText(response, 500, 'The program failed at this request.');
    });
  });
  const newUrl = () => `http://127.0.0.1:${port}${desk.guard.newEntry()}`;
  const close = () =>
    new Promise<void>((closed) => {
      server.close(() => closed());
      server.closeAllConnections();
    });
  return { url: newUrl(), newUrl, close };
}
