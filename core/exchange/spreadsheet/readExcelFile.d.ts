/**
 * The part of the package's types that the core needs. Its own declarations bring in the page's,
 * which the core must not see.
 */
export type CellValue = string | number | boolean | Date | null;

export interface Sheet {
  readonly sheet: string;
  readonly data: readonly (readonly CellValue[])[];
}

export default function readXlsxFile(input: ArrayBuffer): Promise<Sheet[]>;
