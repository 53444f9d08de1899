import path from 'node:path';
import { build } from 'vite';

/** Programs of the command line: itself, and what runs beside it while a binder is made. */
const programs = [
  { source: 'electron/cli/main.ts', file: 'borefolio.js' },
  { source: 'electron/binder/worker.ts', file: 'binderWorker.js' },
] as const;

/**
 * Bundles the command line into dist/cli/borefolio.js, for an installed package: Node runs no
 * TypeScript below node_modules. Packages stay outside; they are installed with it.
 */
export async function bundleCli(top: string): Promise<void> {
  for (const [at, { source, file }] of programs.entries())
    await build({
      configFile: false,
      root: top,
      logLevel: 'warn',
      publicDir: false,
      build: {
        ssr: path.join(top, source),
        outDir: path.join(top, 'dist/cli'),
        emptyOutDir: at === 0,
        target: 'node24',
        minify: false,
        rollupOptions: { output: { entryFileNames: file, codeSplitting: false } },
      },
    });
}
