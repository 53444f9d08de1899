import type { WellRecord } from '../../../core/record/schema.ts';

const long = (word: string) =>
  `${word} of the united upper and lower settlements `.repeat(4).trim();

/** Names, places, a number and signers far longer than the cells of the title block. */
export function longNames(): WellRecord {
  return {
    schemaVersion: 1,
    identity: {
      number: 'PROGRAMME-2026/LOT-12/REGION-07/WELL-000123-B',
      name: long('Well'),
      programme: long('Programme'),
      contract: long('Contract'),
      client: long('Client'),
      contractor: long('Contractor'),
      supervisor: 'Unbroken'.repeat(30),
      state: 'abandonedAndSealed',
    },
    site: { village: long('Village'), spot: long('Spot'), district: long('District') },
    bore: {
      method: 'rotaryJetting',
      rig: long('Rig'),
      fluid: long('Fluid'),
      sections: [{ from: 0, to: 18, diameter: 150 }],
      depthReached: 18,
    },
    log: [{ from: 0, to: 18, material: 'diamicton', colour: 'Unbroken'.repeat(20) }],
    marks: (['supervisor', 'contractor', 'client', 'committee'] as const).map((role) => ({
      role,
      name: long('Signer'),
      organisation: long('Organisation'),
      on: '2026-01-30',
      kind: 'typed' as const,
    })),
    notes: long('Note').repeat(12),
  };
}
