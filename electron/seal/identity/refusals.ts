import { refused } from '../../../core/base/result.ts';

export const notAnIdentity = () =>
  refused(
    'notAnIdentity',
    'The file holds no identity that can be read. Choose the file that was made for the signer, or a PKCS#12 file (.p12, .pfx).',
  );

export const wrongPassphrase = () =>
  refused(
    'wrongPassphrase',
    'The passphrase does not open this identity. Check capitals and the keyboard’s language, and try again.',
  );

export const missingKey = () =>
  refused(
    'missingKey',
    'The file holds a certificate without its key, so nothing can be signed with it. Choose the file that holds both.',
  );

export const missingCertificate = () =>
  refused(
    'missingCertificate',
    'The file holds no certificate that belongs to its key, so a seal could not say whose it is. Choose the file that holds both.',
  );

export const oldCipher = () =>
  refused(
    'oldCipher',
    'The file is locked in a way that is out of date and not read here. Have the program that made it write it again with AES-256.',
  );
