import { readFonts } from '../../../../electron/files/fonts.ts';
import type { Language } from '../../../../core/base/language.ts';
import { seededRandom } from '../../../../core/base/random.ts';
import {
  binderKit,
  type BinderContent,
  type BinderKit,
  type Places,
} from '../../../../core/drawing/binder/binder.ts';
import type { BinderWell } from '../../../../core/drawing/binder/binderWell.ts';
import { binderWellOf } from '../../../../core/drawing/binder/binderWellOf.ts';
import { inBinderOrder } from '../../../../core/drawing/binder/order.ts';
import type { PaperName } from '../../../../core/drawing/paper.ts';
import { fileNames, well } from '../../../demo-data/wells.ts';

const fonts = readFonts().metrics;

export function kitIn(language: Language, paper: PaperName = 'A4'): BinderKit {
  return binderKit(fonts, language, paper);
}

const changedAt = '2026-01-31T12:00:00+00:00';

/** The wells of the demo archive. */
export const demoBinderWells: readonly BinderWell[] = fileNames.map((name) =>
  binderWellOf(well(name), { id: name, revision: 1, changedAt }),
);

const districts = ['Tamaro', 'Belwe', 'Nkoro Nord', 'São Miral', ''];
const stems = ['Ama', 'Ben', 'Kulu', 'Dara', 'Soro', 'Mbele', 'Tiko', 'Ruwa', 'Zina', 'Lemo'];
const endings = ['ya', 'ndi', 'ro', 'banga', 'ville', 'sso', 'mé', 'tão'];

/** Wells like the demo's over a wide country: other numbers, places, years. The same for a seed. */
export function manyWells(count: number, seed = 7): BinderWell[] {
  const random = seededRandom(seed);
  const pick = <T>(from: readonly T[]) => from[Math.floor(random() * from.length)]!;
  return Array.from({ length: count }, (_, at): BinderWell => {
    const base = pick(demoBinderWells);
    const { position, ...placeless } = base;
    const district = pick(districts);
    const village = `${pick(stems)}${pick(endings)}`;
    const year = 2015 + Math.floor(random() * 11);
    const scale = 0.6 + random();
    const moved = (metres: number | undefined) =>
      metres === undefined ? undefined : Math.round(metres * scale * 100) / 100;
    return {
      ...placeless,
      ...(base.drilledM === undefined ? {} : { drilledM: moved(base.drilledM)! }),
      id: `well-${at}`,
      number: `${district.slice(0, 2).toUpperCase() || 'XX'}-${at + 1}`,
      name: `${village} ${pick(['market', 'school', 'health post', 'mosque', 'lower quarter'])}`,
      district,
      village,
      year,
      ...(position && random() < 0.97
        ? { position: [12 + random() * 1.5, 7 + random() * 1.2] as const }
        : {}),
    };
  });
}

/** Names as long as people write them. */
export function longNamed(wells: readonly BinderWell[]): BinderWell[] {
  const long =
    'Groupement des villages riverains de la haute vallée de la Kounangouaya orientale et des hameaux voisins';
  return wells.map((one, at) => ({
    ...one,
    number: `PROGRAMME-EAU-RURALE-2026/LOT-${at}/FORAGE-DE-RECONNAISSANCE-${at + 1}`,
    name: `${long} ${at}`,
    district: `District autonome de ${long}`,
    village: `${long} n° ${at % 7}`,
    programme: `Programme pluriannuel d’${long}`,
  }));
}

export function contentOf(
  wells: readonly BinderWell[],
  more: Partial<BinderContent> = {},
): BinderContent {
  return {
    title: 'Wells of the Tamaro valley',
    madeBy: 'A. Supervisor',
    madeAt: '2026-02-01T09:30:00+00:00',
    wells: inBinderOrder(wells),
    failed: [],
    papers: ['asBuilt', 'layingOut', 'committee', 'attachments'],
    backdrop: [],
    sections: [],
    issued: { papers: [] },
    filterSays: '',
    programVersion: '0.9.0',
    ...more,
  };
}

/** Places as wide as they may be said. */
export const farPlaces: Places = {
  pageOf: (id) => 900 + id.length,
  districtAt: () => 8888,
  partAt: () => 12,
  says: (page) => `99/${page}`,
};
