import { bytesOf } from './bytesOf.ts';

/** Milliseconds that the browser is given to take a file over before it is let go. */
const grace = 10_000;

/** Hands a file to the browser's downloads. */
export function download(fileName: string, base64: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytesOf(base64)], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), grace);
}
