import { openIdentity } from './openIdentity.ts';
import { openPkcs12 } from './openPkcs12.ts';
import type { OpenIdentity } from './seal.ts';

/** Opens an identity of either kind: the program's own is JSON, PKCS#12 is not. */
export const openSigner: OpenIdentity = (file, passphrase, now) =>
  (file[0] === '{'.charCodeAt(0) ? openIdentity : openPkcs12)(file, passphrase, now);
