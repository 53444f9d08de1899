/** A volume's file beside its sisters: `name.pdf` of the only one, else with number and count. */
export function volumeFileName(name: string, volume: number, of: number): string {
  if (of === 1) return `${name}.pdf`;
  const digits = String(of).length;
  return `${name} ${String(volume).padStart(digits, '0')} of ${of}.pdf`;
}

/** The folder beside the volumes that holds issued papers. */
export function issuedFolderName(name: string): string {
  return `${name}-issued`;
}

/** Signs that a file's name cannot hold on one system or another, and control characters. */
const unfit = /[\\/:*?"<>|\p{Cc}]+/gu;

/** A text as the name of a file, without its ending. */
export function fileNameOf(text: string): string {
  return text.replace(unfit, '-').trim().slice(0, 80).trim() || 'binder';
}
