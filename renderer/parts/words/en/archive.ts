export const archive = {
  title: 'Archive',
  back: 'Archive',
  search: 'Search number, place, people, remarks, ground',
  newWell: 'New well',
  newLike: 'New well like the last',
  newLikeHint:
    'Takes over programme, people, place down to the commune, method and pipes of the well changed last',
  columns: {
    number: 'Number',
    name: 'Name',
    village: 'Village',
    district: 'District',
    state: 'State',
    year: 'Year',
    depth: 'Depth (m)',
    findings: 'Findings',
    changed: 'Last change',
    match: 'Found in',
  },
  sortBy: (column: string) => `Sort by ${column}`,
  matchIn: {
    number: 'contract or permit',
    places: 'place',
    people: 'people',
    remarks: 'remarks',
    log: 'log',
  },
  count: (n: number) => (n === 1 ? '1 well' : `${n} wells`),
  countOf: (n: string, all: string) => `${n} of ${all} wells`,
  noneFound: (search: string) =>
    `No well fits “${search}”. Try a part of its number, name, place, people or remarks.`,
  noneFit: 'No well fits all filters. Remove one of them.',
  empty: 'This archive holds no well yet. Make the first one with “New well”.',
  noNumber: 'no number',
  notWritten: 'not written',
  reading: 'Reading the archive …',
  goingThrough: (left: string) => `Going through the wells: ${left} left`,
  weights: {
    errors: (n: number) => `${n} wrong`,
    warnings: (n: number) => `${n} to look at`,
    nothing: 'nothing',
    unknown: 'not gone through yet',
  },
  filters: {
    label: 'Filters',
    region: 'Region',
    district: 'District',
    state: 'State',
    findings: 'Findings',
    yearFrom: 'Year from',
    yearTo: 'to',
    method: 'Method',
    pump: 'Pump',
    client: 'Client',
    contractor: 'Contractor',
    yield: 'Yield (m³/h)',
    depthFrom: 'Depth (m) from',
    yieldFrom: 'Yield (m³/h) from',
    more: 'More filters',
    badAmount: (text: string) => `“${text}” is not a number. Write digits, as in 12.5.`,
    badYear: (text: string) => `“${text}” is not a year. Write four digits, as in 2026.`,
    worst: { wrong: 'something wrong', look: 'to look at', none: 'neither' },
    remove: (filter: string) => `Remove the filter ${filter}`,
    clear: 'Clear all',
    is: (name: string, value: string) => `${name}: ${value}`,
    from: (value: string) => `from ${value}`,
    to: (value: string) => `up to ${value}`,
    searched: (text: string) => `“${text}”`,
  },
  deeds: {
    label: 'The chosen well',
    none: 'No well is chosen',
    open: 'Open',
    duplicate: 'Duplicate as template',
    duplicateHint:
      'A new well with the same programme, people, place down to the commune, method and pipes; no measurements (Ctrl+D)',
    bin: 'Move to bin',
    binHint: 'Delete key',
    sheets: 'Sheets of these wells in one PDF',
    sheetsHint:
      'The A4 sheets of all wells that the list shows, in its order; search and filters narrow it',
    tooMany: (wells: number, most: number) =>
      `The list shows ${wells} wells; one PDF takes ${most} at most. Narrow the list by search or filters.`,
    olderSheets: (wells: number) =>
      wells === 1
        ? 'One well has newer entries that its sheet does not show; open it and make a revision.'
        : `${wells} wells have newer entries that their sheets do not show; open them and make a revision.`,
  },
  views: { label: 'Parts of the archive', wells: 'Wells', import: 'Import', copies: 'Copies' },
  bin: {
    title: 'Bin',
    show: (n: number) => `Bin (${n})`,
    moved: (number: string) => `${number} was moved to the bin.`,
    putBack: 'Put back',
    isBack: (number: string) => `${number} was put back.`,
    empty: 'Empty the bin',
    isEmpty: 'The bin is empty.',
    columns: { revisions: 'Revisions', binned: 'Moved here' },
    toList: 'Back to the wells',
    askTitle: 'Empty the bin?',
    ask: (wells: number, revisions: string) =>
      wells === 1
        ? `One well goes for good, with all its revisions (${revisions}).`
        : `${wells} wells go for good, with all their revisions (${revisions}).`,
    askBackups: 'Backups that were made before keep them until newer backups take their place.',
    keep: 'Keep them',
    emptied: (wells: number) =>
      wells === 1 ? 'One well is gone for good.' : `${wells} wells are gone for good.`,
    dismiss: 'Close this message',
  },
  map: {
    title: 'Map',
    label:
      'Map of the wells that fit. Arrows move, plus and minus zoom, 0 shows all, Page Down and Page Up choose the next and the last well, Enter opens it. Every well shown here is in the list too.',
    splitter: 'Width of the list',
    show: 'Show the map',
    zoomIn: 'Zoom in',
    zoomOut: 'Zoom out',
    all: 'Show all',
    north: 'N',
    compass: { north: 'N', south: 'S', east: 'E', west: 'W' },
    metres: (n: string) => `${n} m`,
    kilometres: (n: string) => `${n} km`,
    legend: 'Signs',
    noState: 'no state',
    withoutPosition: (n: number) =>
      n === 1
        ? 'One well has no position and is not on the map.'
        : `${n} wells have no position and are not on the map.`,
    leftOut: (n: string, most: string) =>
      `The map shows ${most} wells; ${n} more fit. Filter to see them.`,
    nothing: 'No well that fits has a position.',
    backdrops: 'Backdrop',
    addBackdrop: 'Add a boundary …',
    addHint: 'A GeoJSON file of outlines or lines, in WGS 84, up to 5 MB',
    added: (name: string, shapes: number) =>
      shapes === 1
        ? `${name} lies under the wells.`
        : `${name} (${shapes} shapes) lies under the wells.`,
    pointsLeftOut: (n: number) =>
      n === 1 ? 'One point in it was left out.' : `${n} points in it were left out.`,
    tooLarge: (name: string) =>
      `${name}: the file is larger than 5 MB. Simplify its outlines, or cut it to the area of the wells.`,
    remove: (name: string) => `Remove the backdrop ${name}`,
    removed: (name: string) => `${name} was removed.`,
  },
};
