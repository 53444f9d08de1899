import path from 'node:path';

/** The program's top folder, as seen from here and from the bundle in dist/cli alike. */
const top = path.resolve(import.meta.dirname, '../..');

/** Records of invented wells, a JSON file each. */
export const demoData = path.join(top, 'demo-data');

/** The built page. */
export const builtPage = path.join(top, 'dist/page');
