import type { DrillingMethod } from '../../record/bore.ts';
import type { Material } from '../../record/materials.ts';

/**
 * Concepts of CGI Simple Lithology, snapshot of 16 Jan 2025 (github.com/CGI-IUGS/cgi-vocabs,
 * CC BY 4.0). Materials that it does not have are absent: topsoil, laterite and calcrete share the
 * nearest one with others, and so come back by the word that stands beside the concept.
 */
export const lithologyConcept: Partial<Record<Material, string>> = {
  topsoil: 'material_formed_in_surficial_environment',
  madeGround: 'anthropogenic_unconsolidated_material',
  clay: 'clay',
  silt: 'silt',
  sand: 'sand',
  gravel: 'gravel',
  cobbles: 'cobble_gravel_size_sediment',
  boulders: 'boulder_gravel_size_sediment',
  peat: 'peat',
  mud: 'mud',
  diamicton: 'diamicton',
  laterite: 'duricrust',
  calcrete: 'duricrust',
  saprolite: 'residual_material',
  claystone: 'claystone',
  mudstone: 'clastic_mudstone',
  siltstone: 'siltstone',
  shale: 'shale',
  sandstone: 'clastic_sandstone',
  conglomerate: 'clastic_conglomerate',
  breccia: 'breccia',
  limestone: 'limestone',
  chalk: 'chalk',
  dolomite: 'dolostone',
  gypsum: 'rock_gypsum_or_anhydrite',
  salt: 'rock_salt',
  coal: 'coal',
  granite: 'granite',
  gneiss: 'gneiss',
  schist: 'schist',
  quartzite: 'quartzite',
  slate: 'slate',
  phyllite: 'phyllite',
  marble: 'marble',
  amphibolite: 'amphibolite',
  basalt: 'basalt',
  dolerite: 'doleritic_rock',
  andesite: 'andesite',
  rhyolite: 'rhyolite',
  rock: 'rock',
  soil: 'sediment',
};

/** Concepts that are wider than a material of ours. */
const wider: Readonly<Record<string, Material>> = {
  generic_sandstone: 'sandstone',
  generic_conglomerate: 'conglomerate',
  wacke: 'sandstone',
  travertine: 'limestone',
  granodiorite: 'igneousRock',
  gabbro: 'igneousRock',
  mica_schist: 'schist',
  duricrust: 'other',
};

/** The material that a concept means. */
export function materialOfConcept(concept: string): Material | undefined {
  const own = Object.entries(lithologyConcept).find(([, name]) => name === concept);
  return wider[concept] ?? (own?.[0] as Material | undefined);
}

/** Concepts of CGI Borehole Drilling Method, as above. */
export const drillingConcept: Partial<Record<DrillingMethod, string>> = {
  handAuger: 'hand_auger',
  percussion: 'percussion_drilling',
  mudRotary: 'mud_rotary_drilling',
  downTheHoleHammer: 'rotary_hammer_drilling',
  cableTool: 'cable_tool_drilling',
};
