import type { WellRecord } from '../../../core/record/schema.ts';

/**
 * Names and words in letters that no shipped face has (Ethiopic, Arabic, a picture sign), beside
 * letters of the fallback, combining marks, a tab and half a letter: each loss shows as a box.
 */
export function strangeLetters(): WellRecord {
  return {
    schemaVersion: 1,
    identity: {
      number: 'E-08 ጉድጓድ',
      name: 'بئر القرية',
      client: 'Ŋorivé Ɓirassolé ƙẹ́',
      supervisor: 'Yame\u0301lia \u{1f4a7}',
    },
    site: { village: 'ሀገር\tspot', spot: 'half \ud800 a letter' },
    log: [
      {
        from: 0,
        to: 5,
        material: 'sand',
        colour: 'jaune paˆle 砂',
        words: 'Песок мелкий, 砂層 \u{1f4a7}',
      },
      { from: 5, to: 9, material: 'clay', remarks: 'Ωmega ≤ 5 µm ½ ⅔' },
    ],
    strings: [{ name: 'سلسلة', components: [{ kind: 'plain', material: '鋼', length: 6 }] }],
    notes: 'መዝገብ',
  };
}
