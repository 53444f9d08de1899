import { bridgeName, type PageHost } from '../../core/contract/host.ts';
import { loopbackHost } from './loopback.ts';

/** The host of this page: the desktop's bridge where there is one, else the loopback server. */
export function pageHost(): PageHost {
  const bridge = (globalThis as Record<string, unknown>)[bridgeName];
  return (bridge as PageHost | undefined) ?? loopbackHost(fetch.bind(globalThis));
}
