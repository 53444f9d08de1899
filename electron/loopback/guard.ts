import { randomBytes, timingSafeEqual } from 'node:crypto';
import type { IncomingHttpHeaders, IncomingMessage } from 'node:http';

/** Who may speak to the server: pages that came through a secret that only this machine saw. */
export interface Guard {
  /** A path with a secret that opens the server once. */
  newEntry(): string;
  /** The cookie for a secret that was not used before; undefined for any other. */
  cookieFor(secret: string): string | undefined;
  /** Whether a request may be answered at all, entry or not: made to this server, by its page. */
  isOurs(request: IncomingMessage): boolean;
  /** Whether it carries the cookie. */
  isKnown(headers: IncomingHttpHeaders): boolean;
}

const newSecret = () => randomBytes(32).toString('base64url');

function same(a: string, b: string): boolean {
  return a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));
}

function cookiesIn(headers: IncomingHttpHeaders): string[] {
  return (headers.cookie ?? '').split(';').map((one) => one.trim());
}

/**
 * The guard of a server on a port of 127.0.0.1. The cookie's name carries the port, because
 * browsers share cookies over ports and a second program would push the first one's out.
 */
export function guardOf(port: number): Guard {
  const host = `127.0.0.1:${port}`;
  const cookie = `borefolio-${port}=${newSecret()}`;
  const entries = new Set<string>();
  return {
    newEntry() {
      const secret = newSecret();
      entries.add(secret);
      return `/?k=${secret}`;
    },
    cookieFor(secret) {
      const known = [...entries].find((entry) => same(entry, secret));
      if (known === undefined) return undefined;
      entries.delete(known);
      return `${cookie}; HttpOnly; SameSite=Strict; Path=/`;
    },
    isOurs({ method, headers }) {
      if (headers.host !== host) return false;
      const { origin } = headers;
      // Browsers name the origin of every POST, so one without it is not from a page.
      return origin === undefined ? method !== 'POST' : origin === `http://${host}`;
    },
    isKnown: (headers) => cookiesIn(headers).some((one) => same(one, cookie)),
  };
}
