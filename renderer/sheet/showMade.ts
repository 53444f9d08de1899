import { madePath } from '../../core/contract/host.ts';
import { bytesOf } from './bytesOf.ts';

async function sha256(bytes: Uint8Array<ArrayBuffer>): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', bytes);
  return [...new Uint8Array(hash)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * Shows a PDF that the loopback host just made, base64, in a new tab of the browser. False where
 * the browser has no viewer for PDFs or opens no tab.
 */
export async function showMade(pdf: string): Promise<boolean> {
  if (!navigator.pdfViewerEnabled) return false;
  const address = `${madePath}${await sha256(bytesOf(pdf))}`;
  return window.open(address, '_blank') !== null;
}
