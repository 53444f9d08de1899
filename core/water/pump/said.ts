/** Values that a sentence names; those whose names end in M are metres. */
export type SaidValues = Readonly<Record<string, number | string>>;
