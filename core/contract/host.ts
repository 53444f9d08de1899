import type { Answer, CallName, Takes } from './calls.ts';
import type { HostEvent } from './events.ts';

/** What a page is given of its host, and all of it. */
export interface PageHost {
  send<N extends CallName>(name: N, args: Takes<N>): Promise<Answer<N>>;
  /** Calls the listener for each event, until the function that it gives back is called. */
  onEvent(listener: (event: HostEvent) => void): () => void;
}

/** Name on `globalThis` under which the desktop host gives a page its PageHost. */
export const bridgeName = 'borefolioHost';

/** Loopback host: `POST /call/<name>` with the arguments as JSON gives an Answer as JSON. */
export const callPath = '/call/';

/** Loopback host: server-sent events, each one's data a HostEvent as JSON. */
export const eventsPath = '/events';

/** Loopback host: a PDF made a moment ago, by its SHA-256 in hexadecimal. */
export const madePath = '/made/';

/** Desktop host: channel of calls, taking the call's name and its arguments. */
export const callChannel = 'borefolio:call';

/** Desktop host: channel of events, each a HostEvent. */
export const eventChannel = 'borefolio:event';
