/** Object identifiers, by the standards that assign them. */
export const objectIds = {
  /** RFC 5280. */
  commonName: '2.5.4.3',
  organisation: '2.5.4.10',
  keyUsage: '2.5.29.15',
  basicConstraints: '2.5.29.19',
  /** RFC 5758. */
  ecdsaWithSha256: '1.2.840.10045.4.3.2',
  /** RFC 8017. */
  rsaWithSha256: '1.2.840.113549.1.1.11',
  /** NIST, Computer Security Objects Register. */
  sha256: '2.16.840.1.101.3.4.2.1',
  /** RFC 5652. */
  data: '1.2.840.113549.1.7.1',
  signedData: '1.2.840.113549.1.7.2',
  contentType: '1.2.840.113549.1.9.3',
  messageDigest: '1.2.840.113549.1.9.4',
  /** RFC 5035. */
  signingCertificateV2: '1.2.840.113549.1.9.16.2.47',
} as const;
