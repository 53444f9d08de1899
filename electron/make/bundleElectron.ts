import { copyFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, type InlineConfig } from 'vite';

/** What jsPDF asks for only when it is handed a page's markup, which it never is. */
const neverLoaded = ['html2canvas', 'dompurify', 'canvg'];

/** Comes with the runtime, or carries a native file: stays outside the bundle. */
const outside = ['electron', 'better-sqlite3', ...neverLoaded];

/** What paints pixels is no script, and is read from beside the program. */
const pixelsModule = fileURLToPath(import.meta.resolve('@resvg/resvg-wasm/index_bg.wasm'));

interface Program {
  readonly source: string;
  readonly file: string;
  /** A sandboxed page's preload must be one CommonJS file. */
  readonly format: 'es' | 'cjs';
}

const programs: readonly Program[] = [
  { source: 'electron/main/main.ts', file: 'main.js', format: 'es' },
  { source: 'electron/binder/worker.ts', file: 'binderWorker.js', format: 'es' },
  { source: 'electron/preload/preload.ts', file: 'preload.cjs', format: 'cjs' },
];

function configOf(top: string, folder: string, { source, file, format }: Program): InlineConfig {
  return {
    configFile: false,
    root: top,
    logLevel: 'warn',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: path.join(top, source),
      outDir: folder,
      emptyOutDir: false,
      target: 'node24',
      minify: false,
      rollupOptions: {
        external: outside,
        output: { entryFileNames: file, format, codeSplitting: false },
      },
    },
  };
}

/**
 * Bundles the desktop program into dist/electron, everything in it but Electron itself and the
 * database, so that a package ships one folder of modules.
 */
export async function bundleElectron(
  top: string,
  folder = path.join(top, 'dist/electron'),
): Promise<void> {
  for (const program of programs) await build(configOf(top, folder, program));
  await copyFile(pixelsModule, path.join(folder, path.basename(pixelsModule)));
}
