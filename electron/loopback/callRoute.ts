import type { IncomingMessage } from 'node:http';
import { largestFileText } from '../../core/contract/attachmentsShape.ts';
import type { Answer, CallName } from '../../core/contract/calls.ts';
import { callPath } from '../../core/contract/host.ts';
import { answerCall } from '../service/answer.ts';
import type { Service } from '../service/service.ts';

/** Largest body of a call, bytes: a record with its drawn marks many times over. */
export const largestBody = 8 * 1024 * 1024;

/** Calls that files travel with; beside a photo goes its copy for print. */
const fileCalls = ['attachments.put', 'imports.open'];
const largestFileBody = largestFileText + largestBody;

function largestBodyOf(name: string): number {
  return fileCalls.includes(name) ? largestFileBody : largestBody;
}

/** Status and body of an answer to a call. */
export interface CallResponse {
  readonly status: number;
  readonly answer: Answer<CallName>;
}

function refusedWith(status: number, code: string, sentence: string): CallResponse {
  return { status, answer: { ok: false, error: { code, sentence } } };
}

/** The body as text, or undefined when it is too large. */
async function readBody(request: IncomingMessage, largest: number): Promise<string | undefined> {
  const parts: Buffer[] = [];
  let size = 0;
  for await (const part of request as AsyncIterable<Buffer>) {
    size += part.length;
    // Read to its end all the same: a browser shows no answer that comes before it has sent all.
    if (size <= largest) parts.push(part);
  }
  if (size > largest) return undefined;
  return Buffer.concat(parts).toString('utf8');
}

function parsed(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return undefined;
  }
}

/** Reads a call's arguments from a request's JSON body and has it answered. */
export async function respondToCall(
  service: Service,
  request: IncomingMessage,
  pathName: string,
  report: (name: string, thrown: unknown) => void,
): Promise<CallResponse> {
  if (request.headers['content-type']?.split(';')[0]?.trim() !== 'application/json')
    return refusedWith(415, 'notJson', 'Send the arguments as application/json.');
  const name = pathName.slice(callPath.length);
  const largest = largestBodyOf(name);
  const text = await readBody(request, largest);
  if (text === undefined)
    return refusedWith(
      413,
      'tooLarge',
      `A call takes at most ${Math.floor(largest / 2 ** 20)} MB of JSON.`,
    );
  const args = parsed(text);
  if (!args) return refusedWith(400, 'notJson', 'The arguments are not JSON. Send a JSON object.');
  return { status: 200, answer: await answerCall(service, name, args.value, report) };
}
