import { protocol } from 'electron';
import { contentPolicy, readPageFile } from '../files/pageFiles.ts';
import { isPage, pageScheme } from './pageAddress.ts';

/** Gives the scheme an origin of its own; must be called before the program is ready. */
export function declarePageScheme(): void {
  const privileges = { standard: true, secure: true, supportFetchAPI: true };
  protocol.registerSchemesAsPrivileged([{ scheme: pageScheme, privileges }]);
}

/** Serves the built page from its folder, with the policy that keeps all else out. */
export function servePage(pageFolder: string): void {
  protocol.handle(pageScheme, async ({ url, method }) => {
    const asked = isPage(url) && method === 'GET' ? new URL(url).pathname : undefined;
    const file = asked === undefined ? undefined : await readPageFile(pageFolder, asked);
    if (!file) return new Response('There is nothing here.', { status: 404 });
    const headers = {
      'Content-Type': file.type,
      'Content-Security-Policy': contentPolicy,
      'X-Content-Type-Options': 'nosniff',
    };
    return new Response(file.bytes, { headers });
  });
}
