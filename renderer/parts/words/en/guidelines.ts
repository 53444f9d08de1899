/** The user's sets of guideline values for water. */
export const guidelines = {
  title: 'Guideline values for water',
  shipped: 'with the program',
  import: 'Import values …',
  importFile: 'Guideline values from a file',
  export: 'Export',
  exportOf: (name: string) => `Export: ${name}`,
  remove: 'Delete',
  removeOf: (name: string) => `Delete: ${name}`,
  askRemove: (name: string) =>
    `Delete “${name}”? Wells that name it are compared with the general values from then on.`,
  removeIt: 'Delete it',
  keepIt: 'Keep it',
  askReplace: (name: string, version: string) =>
    `“${name}” is here already. Replace it with version ${version} of the file?`,
  replaceIt: 'Replace it',
  imported: (name: string) => `“${name}” was taken from the file.`,
  removed: (name: string) => `“${name}” was deleted.`,
};
