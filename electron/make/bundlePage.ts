import path from 'node:path';
import { build } from 'vite';

/** Builds the page into dist/page. */
export async function bundlePage(top: string): Promise<void> {
  await build({
    configFile: path.join(top, 'vite.config.ts'),
    root: path.join(top, 'renderer'),
    logLevel: 'warn',
  });
}
