export const table = {
  rowHead: 'Row',
  newRow: 'Next row',
  row: (n: number) => `Row ${n}`,
  more: (n: number) => `More of row ${n}`,
  moreNew: 'More of the next row',
  sort: 'Put in order of depth',
  sortByTime: 'Put in order of time',
  cell: (label: string, row: number) => `${label}, row ${row}`,
  removeItem: (title: string) => `Delete ${title}`,
  choose: '–',
};
