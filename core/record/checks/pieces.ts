import type { WellRecord } from '../schema.ts';
import type { Component } from '../strings.ts';
import type { Trouble } from '../trouble.ts';
import { notLess } from './figure.ts';

function checkSlots(path: string, { slotSpacing, slotWidth }: Component): Trouble[] {
  return notLess(
    { path: `${path}.slotSpacing`, value: slotSpacing },
    { path: `${path}.slotWidth`, value: slotWidth },
    'lessThan',
  );
}

/** Screens whose slots would run into each other. */
export function checkPieces({ strings }: WellRecord): Trouble[] {
  return (strings ?? []).flatMap(({ components }, string) =>
    components.flatMap((piece, at) => checkSlots(`strings[${string}].components[${at}]`, piece)),
  );
}
