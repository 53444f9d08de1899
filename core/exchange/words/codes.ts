import type { WordGroup } from './wordTable.ts';

export const codes: readonly WordGroup[] = [
  {
    source:
      'codes of tests/data/ngis-lithology, each read beside the description of the same rows; ' +
      'those that stand beside several materials are left out',
    codes: {
      clay: ['clay'],
      grvl: ['gravel'],
      sand: ['sand'],
      shle: ['shale'],
      tpsl: ['topsoil'],
      soil: ['soil'],
      qrtz: ['quartz'],
      slte: ['slate'],
      silt: ['silt'],
      cglm: ['conglomerate'],
      bdrk: ['rock'],
      sdsn: ['sandstone'],
      sdcy: ['clay', 'sand'],
      grnt: ['granite'],
      rock: ['rock'],
    },
  },
  {
    source: 'symbols of soil groups of ASTM D2487, from memory',
    codes: {
      gw: ['gravel'],
      gp: ['gravel'],
      gm: ['gravel', 'silt'],
      gc: ['gravel', 'clay'],
      sw: ['sand'],
      sp: ['sand'],
      sm: ['sand', 'silt'],
      sc: ['sand', 'clay'],
      ml: ['silt'],
      mh: ['silt'],
      cl: ['clay'],
      ch: ['clay'],
      pt: ['peat'],
    },
  },
];
