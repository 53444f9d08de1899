/** Milliseconds that the browser is given to take a file over before it is let go. */
const grace = 10_000;

function bytesOf(base64: string): Uint8Array<ArrayBuffer> {
  return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
}

/** Hands a file to the browser's downloads. */
export function download(fileName: string, base64: string, type: string): void {
  const address = URL.createObjectURL(new Blob([bytesOf(base64)], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = fileName;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), grace);
}
