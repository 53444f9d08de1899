/** `npm run build`: the page and the programs, into dist/. */
import path from 'node:path';
import { bundleCli } from './bundleCli.ts';
import { bundleElectron } from './bundleElectron.ts';
import { bundlePage } from './bundlePage.ts';

const top = path.resolve(import.meta.dirname, '../..');
await bundlePage(top);
await bundleElectron(top);
await bundleCli(top);
