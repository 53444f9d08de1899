import path from 'node:path';
import { build } from 'vite';

/**
 * Bundles the command line into dist/cli/borefolio.js, for an installed package: Node runs no
 * TypeScript below node_modules. Packages stay outside; they are installed with it.
 */
export async function bundleCli(top: string): Promise<void> {
  await build({
    configFile: false,
    root: top,
    logLevel: 'warn',
    publicDir: false,
    build: {
      ssr: path.join(top, 'electron/cli/main.ts'),
      outDir: path.join(top, 'dist/cli'),
      emptyOutDir: true,
      target: 'node24',
      minify: false,
      rollupOptions: { output: { entryFileNames: 'borefolio.js' } },
    },
  });
}
