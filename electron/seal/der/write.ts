import {
  BitString,
  Constructed,
  fromBER,
  Integer,
  Null,
  ObjectIdentifier,
  OctetString,
  Sequence,
  Set,
  Utf8String,
  type BaseBlock,
} from 'asn1js';

/** A value of ASN.1, to be written in DER (ITU-T X.690). */
export type Value = BaseBlock;

export const sequence = (...value: Value[]): Value => new Sequence({ value });
export const setOf = (...value: Value[]): Value => new Set({ value });
export const objectId = (value: string): Value => new ObjectIdentifier({ value });
export const integer = (value: number): Value => new Integer({ value });
export const nothing = (): Value => new Null();
export const octets = (valueHex: Uint8Array): Value => new OctetString({ valueHex });
export const utf8 = (value: string): Value => new Utf8String({ value });

/** `unused` counts the bits of the last byte that mean nothing. */
export const bits = (valueHex: Uint8Array, unused = 0): Value =>
  new BitString({ valueHex, unusedBits: unused });

/** A whole number of many bytes, the highest first; its first bit is a sign. */
export const longInteger = (valueHex: Uint8Array): Value => new Integer({ valueHex });

/** `[number]` around values, as EXPLICIT and constructed IMPLICIT tags write it. */
export const tagged = (tagNumber: number, ...value: Value[]): Value =>
  new Constructed({ idBlock: { tagClass: 3, tagNumber }, value });

/** What stands ready in DER. */
export const ready = (der: Uint8Array): Value => fromBER(der).result;

export function encode(value: Value): Uint8Array {
  return new Uint8Array(value.toBER());
}
