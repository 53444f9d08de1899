import { real, type Code } from './codes.ts';

/** Handles that the file's fixed parts go by; entities count on from the last. */
export const handles = {
  vports: '8',
  lineTypes: '5',
  layers: '2',
  styles: '3',
  views: '6',
  coordinates: '7',
  applications: '9',
  dimensionStyles: 'A',
  blockRecords: '1',
  modelSpace: '1F',
  paperSpace: '1B',
  root: 'C',
  groups: 'D',
  first: 0x10000,
} as const;

function section(name: string, codes: readonly Code[]): Code[] {
  return [[0, 'SECTION'], [2, name], ...codes, [0, 'ENDSEC']];
}

function table(name: string, handle: string, count: number, entries: readonly Code[]): Code[] {
  return [
    [0, 'TABLE'],
    [2, name],
    [5, handle],
    [330, '0'],
    [100, 'AcDbSymbolTable'],
    [70, count],
    ...entries,
    [0, 'ENDTAB'],
  ];
}

function entry(kind: string, handle: string, owner: string, record: string): Code[] {
  return [
    [0, kind],
    [kind === 'DIMSTYLE' ? 105 : 5, handle],
    [330, owner],
    [100, 'AcDbSymbolTableRecord'],
    [100, record],
  ];
}

/** A dash pattern under its name; lengths in the file's metres. */
export interface DashPattern {
  readonly name: string;
  readonly lengths: readonly number[];
}

function lineTypeEntry({ name, lengths }: DashPattern, handle: string): Code[] {
  const sum = lengths.reduce((total, one) => total + one, 0);
  return [
    ...entry('LTYPE', handle, handles.lineTypes, 'AcDbLinetypeTableRecord'),
    [2, name],
    [70, 0],
    [3, ''],
    [72, 65],
    [73, lengths.length],
    [40, real(sum)],
    ...lengths.flatMap((length, at): Code[] => [
      [49, real(at % 2 === 0 ? length : -length)],
      [74, 0],
    ]),
  ];
}

function layerEntry(name: string, handle: string): Code[] {
  return [
    ...entry('LAYER', handle, handles.layers, 'AcDbLayerTableRecord'),
    [2, name],
    [70, 0],
    [62, 7],
    [6, 'Continuous'],
    [370, 13],
  ];
}

const styleEntry: Code[] = [
  ...entry('STYLE', '11', handles.styles, 'AcDbTextStyleTableRecord'),
  [2, 'Standard'],
  [70, 0],
  [40, '0.0'],
  [41, '1.0'],
  [50, '0.0'],
  [71, 0],
  [42, '2.5'],
  [3, 'arial.ttf'],
  [4, ''],
];

const viewportEntry = (
  width: number,
  height: number,
  [x, y]: readonly [number, number],
): Code[] => [
  ...entry('VPORT', '94', handles.vports, 'AcDbViewportTableRecord'),
  [2, '*Active'],
  [70, 0],
  [10, '0.0'],
  [20, '0.0'],
  [11, '1.0'],
  [21, '1.0'],
  [12, real(x)],
  [22, real(y)],
  [40, real(height)],
  [41, real(width / height)],
];

const blockRecordEntry = (name: string, handle: string): Code[] => [
  ...entry('BLOCK_RECORD', handle, handles.blockRecords, 'AcDbBlockTableRecord'),
  [2, name],
];

/** A drawing's extent in metres. */
export interface Extent {
  readonly min: readonly [number, number];
  readonly max: readonly [number, number];
}

/** Units are metres (code 6), line types in metres too; text is of the Western code page. */
export function headerSection({ min, max }: Extent, nextHandle: string): Code[] {
  const variable = (name: string, ...codes: Code[]): Code[] => [[9, name], ...codes];
  return section('HEADER', [
    ...variable('$ACADVER', [1, 'AC1015']),
    ...variable('$DWGCODEPAGE', [3, 'ANSI_1252']),
    ...variable('$HANDSEED', [5, nextHandle]),
    ...variable('$INSUNITS', [70, 6]),
    ...variable('$MEASUREMENT', [70, 1]),
    ...variable('$LUNITS', [70, 2]),
    ...variable('$LUPREC', [70, 3]),
    ...variable('$EXTMIN', [10, real(min[0])], [20, real(min[1])], [30, '0.0']),
    ...variable('$EXTMAX', [10, real(max[0])], [20, real(max[1])], [30, '0.0']),
    ...variable('$LTSCALE', [40, '1.0']),
    ...variable('$FILLMODE', [70, 1]),
  ]);
}

export const classesSection: Code[] = section('CLASSES', []);

const hexadecimal = (value: number) => value.toString(16).toUpperCase();

/** Every table that the version asks for, with the layers and dash patterns in use. */
export function tablesSection(
  layers: readonly string[],
  dashes: readonly DashPattern[],
  { min, max }: Extent,
): Code[] {
  const patterns = ['ByBlock', 'ByLayer', 'Continuous'].map((name) => ({ name, lengths: [] }));
  const lineTypes = [...patterns, ...dashes];
  const middle = [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2] as const;
  const view = viewportEntry(max[0] - min[0], max[1] - min[1], middle);
  return section('TABLES', [
    ...table('VPORT', handles.vports, 1, view),
    ...table(
      'LTYPE',
      handles.lineTypes,
      lineTypes.length,
      lineTypes.flatMap((one, at) => lineTypeEntry(one, `A${hexadecimal(at)}0`)),
    ),
    ...table(
      'LAYER',
      handles.layers,
      layers.length,
      layers.flatMap((name, at) => layerEntry(name, `B${hexadecimal(at)}0`)),
    ),
    ...table('STYLE', handles.styles, 1, styleEntry),
    ...table('VIEW', handles.views, 0, []),
    ...table('UCS', handles.coordinates, 0, []),
    ...table('APPID', handles.applications, 1, [
      ...entry('APPID', '12', handles.applications, 'AcDbRegAppTableRecord'),
      [2, 'ACAD'],
      [70, 0],
    ]),
    ...table('DIMSTYLE', handles.dimensionStyles, 1, [
      ...entry('DIMSTYLE', '27', handles.dimensionStyles, 'AcDbDimStyleTableRecord'),
      [2, 'Standard'],
      [70, 0],
    ]),
    ...table('BLOCK_RECORD', handles.blockRecords, 2, [
      ...blockRecordEntry('*Model_Space', handles.modelSpace),
      ...blockRecordEntry('*Paper_Space', handles.paperSpace),
    ]),
  ]);
}

function block(name: string, owner: string, begin: string, end: string): Code[] {
  return [
    [0, 'BLOCK'],
    [5, begin],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockBegin'],
    [2, name],
    [70, 0],
    [10, '0.0'],
    [20, '0.0'],
    [30, '0.0'],
    [3, name],
    [1, ''],
    [0, 'ENDBLK'],
    [5, end],
    [330, owner],
    [100, 'AcDbEntity'],
    [8, '0'],
    [100, 'AcDbBlockEnd'],
  ];
}

export const blocksSection: Code[] = section('BLOCKS', [
  ...block('*Model_Space', handles.modelSpace, '20', '21'),
  ...block('*Paper_Space', handles.paperSpace, '1C', '1D'),
]);

export const entitiesSection = (codes: readonly Code[]): Code[] => section('ENTITIES', codes);

export const objectsSection: Code[] = section('OBJECTS', [
  [0, 'DICTIONARY'],
  [5, handles.root],
  [330, '0'],
  [100, 'AcDbDictionary'],
  [281, 1],
  [3, 'ACAD_GROUP'],
  [350, handles.groups],
  [0, 'DICTIONARY'],
  [5, handles.groups],
  [330, handles.root],
  [100, 'AcDbDictionary'],
  [281, 1],
]);
