import type { Answer, CallName, Takes } from '../../core/contract/calls.ts';
import type { HostEvent } from '../../core/contract/events.ts';
import { callPath, eventsPath, type PageHost } from '../../core/contract/host.ts';

async function post<N extends CallName>(
  fetching: typeof fetch,
  name: N,
  args: Takes<N>,
): Promise<Answer<N>> {
  const response = await fetching(`${callPath}${name}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(args),
  });
  return (await response.json()) as Answer<N>;
}

function listen(listener: (event: HostEvent) => void): () => void {
  const source = new EventSource(eventsPath);
  source.onmessage = ({ data }) => listener(JSON.parse(data) as HostEvent);
  return () => source.close();
}

/** The service behind the page's own server. Calls throw when nobody answers. */
export function loopbackHost(fetching: typeof fetch): PageHost {
  return { send: (name, args) => post(fetching, name, args), onEvent: listen };
}
