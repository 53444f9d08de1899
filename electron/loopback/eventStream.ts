import type { ServerResponse } from 'node:http';
import type { Service } from '../service/service.ts';

/** Keeps proxies and sleeping laptops from taking a silent stream for a dead one. */
const breathMs = 25_000;

/** Sends the service's events to a page until it goes away. */
export function streamEvents(service: Service, response: ServerResponse): void {
  response.writeHead(200, { 'Content-Type': 'text/event-stream; charset=utf-8' });
  response.write(':\n\n');
  const breath = setInterval(() => response.write(':\n\n'), breathMs);
  const stop = service.onEvent((event) => response.write(`data: ${JSON.stringify(event)}\n\n`));
  response.on('close', () => {
    clearInterval(breath);
    stop();
  });
}
