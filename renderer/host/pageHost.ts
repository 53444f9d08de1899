import { bridgeName, type PageHost } from '../../core/contract/host.ts';
import { loopbackHost } from './loopback.ts';

/** Code of the refusal that the page itself gives when nobody answers. */
export const unreachable = 'unreachable';

const noAnswer = {
  ok: false,
  error: {
    code: unreachable,
    sentence: 'The program does not answer. Leave this page open and start Borefolio again.',
  },
} as const;

/** The same host, which gives a refusal where its own calls would throw. */
export function answering(host: PageHost): PageHost {
  return {
    async send(name, args) {
      try {
        return await host.send(name, args);
      } catch (thrown) {
        console.warn(name, thrown);
        return noAnswer;
      }
    },
    onEvent: (listener) => host.onEvent(listener),
  };
}

/** The host of this page: the desktop's bridge where there is one, else the loopback server. */
export function pageHost(): PageHost {
  const bridge = (globalThis as Record<string, unknown>)[bridgeName] as PageHost | undefined;
  return answering(bridge ?? loopbackHost(fetch.bind(globalThis)));
}
