/**
 * The map of rooms: what each folder may import, and what it may touch of its host.
 * An import is allowed when its target lies in one of the room's doors (a folder or one file).
 * The longest matching room wins, so `core/paint/pdf` is judged by its own row.
 */
export interface Room {
  /** Folder, from the top of the project. */
  readonly room: string;
  /** Rooms, or single files of rooms, that it may import besides itself. */
  readonly doors: readonly string[];
  /** Outside packages that it may import (exact specifier or its first part). */
  readonly packages: readonly string[];
  /** 'pure' has neither Node nor page; 'handed' also has no clock, chance or locale. */
  readonly world: 'handed' | 'pure' | 'page' | 'node' | 'both';
}

const recordSide = ['core/base', 'core/record'];
const findingSide = [...recordSide, 'core/model'];
const practiceSide = [...findingSide, 'core/practice'];
const pureCore = [
  ...practiceSide,
  'core/judging',
  'core/quantities',
  'core/layingOut',
  'core/drawing',
  'core/contract',
];

export const rooms: readonly Room[] = [
  { room: 'core/base', doors: [], packages: [], world: 'handed' },
  { room: 'core/record', doors: ['core/base'], packages: ['zod'], world: 'handed' },
  { room: 'core/model', doors: recordSide, packages: [], world: 'handed' },
  { room: 'core/practice', doors: findingSide, packages: ['zod'], world: 'handed' },
  { room: 'core/quantities', doors: practiceSide, packages: [], world: 'handed' },
  {
    room: 'core/layingOut',
    doors: [...practiceSide, 'core/quantities'],
    packages: [],
    world: 'handed',
  },
  { room: 'core/hydraulics', doors: findingSide, packages: [], world: 'handed' },
  { room: 'core/water', doors: practiceSide, packages: ['zod'], world: 'handed' },
  {
    room: 'core/judging',
    doors: [...practiceSide, 'core/water'],
    packages: [],
    world: 'handed',
  },
  {
    room: 'core/drawing',
    doors: [
      ...practiceSide,
      'core/quantities',
      'core/layingOut',
      'core/hydraulics',
      'core/water',
      'assets/pictograms',
    ],
    packages: ['uqr'],
    world: 'handed',
  },
  {
    room: 'core/binding',
    doors: ['core/base', 'core/drawing'],
    packages: [],
    world: 'handed',
  },
  {
    room: 'core/template',
    doors: ['core/base', 'core/drawing/parts/headStrip.ts'],
    packages: ['zod'],
    world: 'handed',
  },
  {
    room: 'core/changes',
    doors: [...findingSide, 'core/drawing/describe.ts', 'core/drawing/words'],
    packages: [],
    world: 'handed',
  },
  {
    room: 'core/paint',
    doors: ['core/base', 'core/drawing/items.ts'],
    packages: [],
    world: 'pure',
  },
  {
    room: 'core/paint/pdf',
    doors: ['core/base', 'core/drawing/items.ts'],
    packages: ['jspdf'],
    world: 'pure',
  },
  {
    room: 'core/exchange',
    doors: findingSide,
    packages: ['csv-parse', 'fast-xml-parser', 'fflate', 'read-excel-file', 'zod'],
    world: 'handed',
  },
  {
    room: 'core/contract',
    doors: [
      ...practiceSide,
      'core/exchange',
      'core/quantities',
      'core/layingOut',
      'core/water/guidelines',
      'core/drawing/binder/binder.ts',
      'core/drawing/paper.ts',
      'core/exchange/writtenFormats.ts',
      'core/drawing/parts/headStrip.ts',
      'core/drawing/parts/columnNames.ts',
      'core/drawing/parts/revisionNote.ts',
    ],
    packages: ['zod'],
    world: 'handed',
  },
  {
    room: 'electron/service',
    doors: ['core', 'electron/archive', 'electron/files', 'electron/seal'],
    packages: ['fflate', 'zod', '@resvg/resvg-wasm'],
    world: 'node',
  },
  {
    room: 'electron/archive',
    // The words tell which materials a search names.
    doors: [...recordSide, 'core/drawing/words', 'electron/files'],
    packages: ['better-sqlite3'],
    world: 'node',
  },
  {
    room: 'electron/seal',
    doors: ['core/base', 'core/paint/pdf/paperNamespace.ts'],
    packages: ['asn1js', 'pkijs'],
    world: 'node',
  },
  {
    room: 'electron/binder',
    doors: [
      'core',
      'electron/service',
      'electron/archive',
      'electron/files',
      'electron/seal',
      'package.json',
    ],
    packages: [],
    world: 'node',
  },
  { room: 'electron/files', doors: ['core/base'], packages: [], world: 'node' },
  {
    room: 'electron/main',
    doors: ['electron/service', 'electron/binder', 'core/base', 'core/contract', 'electron/files'],
    packages: ['electron'],
    world: 'node',
  },
  { room: 'electron/preload', doors: ['core/contract'], packages: ['electron'], world: 'both' },
  {
    room: 'electron/loopback',
    doors: ['electron/service', 'core/contract', 'electron/files'],
    packages: [],
    world: 'node',
  },
  {
    room: 'electron/cli',
    doors: [
      'core',
      'electron/service',
      'electron/archive',
      'electron/binder',
      'electron/seal',
      'electron/loopback',
      'electron/files',
    ],
    packages: [],
    world: 'node',
  },
  { room: 'electron/launch', doors: [], packages: [], world: 'node' },
  {
    room: 'electron/make',
    doors: ['core', 'electron/service', 'electron/files'],
    packages: ['fontkit', 'vite'],
    world: 'node',
  },
  { room: 'renderer/host', doors: ['core/base', 'core/contract'], packages: [], world: 'page' },
  {
    room: 'renderer/paint',
    doors: ['core/base', 'core/drawing/items.ts', 'core/paint/svg'],
    packages: ['d3'],
    world: 'page',
  },
  {
    room: 'renderer/state',
    doors: [...pureCore, 'core/water/guidelines', 'renderer/host'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/parts',
    doors: [
      'core/base',
      'core/drawing/words',
      'core/drawing/parts/details/words',
      'renderer/state',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/editors',
    doors: [
      ...pureCore,
      'core/hydraulics',
      'core/exchange/logger',
      'core/water/guidelines',
      'renderer/state',
      'renderer/parts',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/sheet',
    doors: [...pureCore, 'renderer/state', 'renderer/parts', 'renderer/paint'],
    packages: ['svelte', 'd3'],
    world: 'page',
  },
  {
    room: 'renderer/photos',
    doors: [
      ...pureCore,
      'renderer/state',
      'renderer/parts',
      'renderer/editors',
      'renderer/sheet/download.ts',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/completion',
    doors: [...pureCore, 'renderer/state', 'renderer/parts', 'renderer/editors'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/quality',
    doors: [...pureCore, 'core/water', 'renderer/state', 'renderer/parts', 'renderer/editors'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/siting',
    doors: [
      ...pureCore,
      'core/water',
      'renderer/state',
      'renderer/parts',
      'renderer/editors',
      'renderer/quality/ReckonedLine.svelte',
      'renderer/quality/sayInterval.ts',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/pump',
    doors: [
      ...pureCore,
      'core/water',
      'core/hydraulics',
      'renderer/state',
      'renderer/parts',
      'renderer/editors',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/water',
    doors: [
      ...pureCore,
      'core/hydraulics',
      'core/water',
      'renderer/state',
      'renderer/parts',
      'renderer/editors',
    ],
    packages: ['svelte', 'd3'],
    world: 'page',
  },
  {
    room: 'renderer/issues',
    doors: [...pureCore, 'renderer/state', 'renderer/parts', 'renderer/sheet/download.ts'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/revisions',
    doors: [...pureCore, 'renderer/state', 'renderer/parts'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/marks',
    doors: [...pureCore, 'renderer/state', 'renderer/parts', 'renderer/photos/keepFile.ts'],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/practices',
    doors: [
      ...pureCore,
      'core/water/guidelines',
      'renderer/state',
      'renderer/parts',
      'renderer/editors',
      'renderer/sheet/download.ts',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/exchange',
    doors: [
      ...pureCore,
      'core/exchange/tables',
      'renderer/state',
      'renderer/parts',
      'renderer/sheet/download.ts',
    ],
    packages: ['svelte'],
    world: 'page',
  },
  {
    room: 'renderer/archive',
    doors: [
      ...pureCore,
      'core/template',
      'renderer/state',
      'renderer/exchange/ImportView.svelte',
      'renderer/parts',
      'renderer/host',
      'renderer/sheet/download.ts',
    ],
    packages: ['svelte', 'd3'],
    world: 'page',
  },
  { room: 'renderer', doors: ['renderer', 'core'], packages: ['svelte'], world: 'page' },
];

/** Rooms whose files are data or tests and are not judged. */
export const unjudged = ['assets', 'demo-data', 'docs', 'tests'];
