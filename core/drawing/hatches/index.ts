import type { FillKind } from '../../record/annulus.ts';
import type { Material } from '../../record/materials.ts';
import type { HatchTile } from '../items.ts';
import { carbonates } from './carbonates.ts';
import { clastics } from './clastics.ts';
import { crusts } from './crusts.ts';
import { fills } from './fills.ts';
import type { Hatch } from './hatch.ts';
import { igneous } from './igneous.ts';
import { metamorphics } from './metamorphics.ts';
import { mixedTile } from './mix.ts';
import { soils } from './soils.ts';
import { unnamed } from './unnamed.ts';

const grounds: Readonly<Record<Material, Hatch>> = {
  ...soils,
  ...crusts,
  ...clastics,
  ...carbonates,
  ...metamorphics,
  ...igneous,
  ...unnamed,
};

/** The hatch of a material of the log. */
export function hatchFor(material: Material): string {
  return material;
}

/** The hatch of what stands in the annulus. */
export function hatchForFill(fill: FillKind | 'unrecorded'): string {
  return `fill-${fill}`;
}

/** The hatch of a material with a second one in it, such as `sand+clay`. */
export function mixedHatch(main: Material, second: Material): string {
  return main === second ? main : `${main}+${second}`;
}

function tilesOf(hatches: Readonly<Record<string, Hatch>>, name: (key: string) => string) {
  return Object.entries(hatches).map(([key, { tile }]) => [name(key), tile] as const);
}

/** Every tile by its hatch, mixtures apart: those are made when asked for. */
export const hatchTiles: Readonly<Record<string, HatchTile>> = Object.fromEntries([
  ...tilesOf(grounds, (key) => key),
  ...tilesOf(fills, (key) => hatchForFill(key as FillKind)),
]);

function isMaterial(word: string | undefined): word is Material {
  return word !== undefined && Object.hasOwn(grounds, word);
}

/** Mixtures already made: a sheet on screen asks for the same ones at every stroke of a key. */
const mixtures = new Map<string, HatchTile>();

/** The tile of any hatch, mixtures included; an unknown one is a defect. */
export function tileFor(hatch: string): HatchTile {
  const tile = hatchTiles[hatch] ?? mixtures.get(hatch);
  if (tile) return tile;
  const [main, second] = hatch.split('+');
  if (!isMaterial(main) || !isMaterial(second)) throw new Error(`There is no hatch ${hatch}`);
  const made = mixedTile(grounds[main], grounds[second]);
  mixtures.set(hatch, made);
  return made;
}

/** The tiles of some hatches, as a drawing carries them. */
export function tilesFor(hatches: Iterable<string>): Record<string, HatchTile> {
  return Object.fromEntries([...new Set(hatches)].map((hatch) => [hatch, tileFor(hatch)]));
}
