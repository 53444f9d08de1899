/** Ground that is no rock, or no longer. */
export const soils = [
  'topsoil',
  'madeGround',
  'clay',
  'silt',
  'sand',
  'gravel',
  'cobbles',
  'boulders',
  'peat',
  'mud',
  'loess',
  'diamicton',
  'laterite',
  'calcrete',
  'saprolite',
] as const;

/**
 * Principal materials of the ground, in the trade's words. `other` keeps what the log says in
 * words; `rock` and `soil` are for logs that say no more.
 */
export const materials = [
  ...soils,
  'claystone',
  'mudstone',
  'siltstone',
  'shale',
  'sandstone',
  'conglomerate',
  'breccia',
  'limestone',
  'chalk',
  'dolomite',
  'marl',
  'gypsum',
  'salt',
  'coal',
  'granite',
  'gneiss',
  'schist',
  'quartzite',
  'slate',
  'phyllite',
  'marble',
  'amphibolite',
  'basalt',
  'dolerite',
  'andesite',
  'rhyolite',
  'tuff',
  'quartz',
  'igneousRock',
  'rock',
  'soil',
  'cavity',
  'noSample',
  'other',
] as const;

export type Material = (typeof materials)[number];
