/** Bytes of a file as base64. */
export function fileBase64(file: Blob): Promise<string> {
  return new Promise((done, failed) => {
    const reader = new FileReader();
    reader.onload = () => done((reader.result as string).replace(/^[^,]*,/, ''));
    reader.onerror = () => failed(reader.error as Error);
    reader.readAsDataURL(file);
  });
}
