export const archive = {
  title: 'Archive',
  back: 'Archive',
  search: 'Search number, name or place',
  newWell: 'New well',
  columns: {
    number: 'Number',
    name: 'Name',
    village: 'Village',
    district: 'District',
    state: 'State',
    depth: 'Depth (m)',
    changed: 'Last change',
  },
  count: (n: number) => (n === 1 ? '1 well' : `${n} wells`),
  noneFound: (search: string) =>
    `No well fits “${search}”. Try a part of its number, name or place.`,
  empty: 'This archive holds no well yet. Make the first one with “New well”.',
  noNumber: 'no number',
  reading: 'Reading the archive …',
};
