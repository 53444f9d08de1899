import type { FindingCode, FindingText } from './texts.ts';

type WaterCode = Extract<FindingCode, `level.${string}` | `strike.${string}` | `pump.${string}`>;

/** Levels, strikes and the pump. */
export const portugueseWater: Record<WaterCode, FindingText> = {
  'level.noStickUp': {
    title: 'Nível impossível de reduzir ao solo',
    sentence:
      'Um nível foi lido {readM} m abaixo do topo do tubo, mas a altura desse topo não é conhecida; é deixado de fora.',
    why: 'Níveis de referências diferentes não se podem comparar.',
    todo: 'Escrever a altura do topo do tubo acima do solo, ou as peças com a sua posição.',
  },
  'level.stickUpAssumed': {
    title: 'Nível reduzido com uma altura suposta',
    sentence:
      'Um nível lido {readM} m abaixo do topo do tubo é desenhado a {fromM} m abaixo do solo; supõe-se o topo do tubo {stickUpM} m acima do solo.',
    why: 'O nível está errado tanto quanto a altura suposta.',
    todo: 'Medir a altura do topo do tubo acima do solo e escrevê-la.',
  },
  'level.aboveGround': {
    title: 'Água acima do solo',
    sentence: 'Um nível de água está {heightM} m acima do solo.',
    why: 'Certo num furo repuxante; senão, a leitura ou a sua referência está errada.',
    todo: 'Verificar a leitura, e se foi feita do solo ou do topo do tubo.',
  },
  'level.belowHole': {
    title: 'Água abaixo do fundo do furo',
    sentence: 'Um nível de água de {levelM} m fica abaixo do fundo do furo, que tem {depthM} m.',
    why: 'Uma sonda não encontra água abaixo do fundo; um dos dois números está errado.',
    todo: 'Corrigir a leitura, a sua referência ou a profundidade do furo.',
  },
  'strike.aboveGround': {
    title: 'Entrada de água acima do solo',
    sentence: 'Uma entrada de água está registada {heightM} m acima do solo.',
    why: 'As profundidades contam-se para baixo a partir do solo.',
    todo: 'Escrever a profundidade como número positivo.',
  },
  'strike.belowHole': {
    title: 'Entrada de água abaixo do fundo',
    sentence: 'Uma entrada de água a {strikeM} m fica abaixo do fundo do furo, que tem {depthM} m.',
    why: 'Não se pode ter encontrado água abaixo do fundo; uma das duas profundidades está errada.',
    todo: 'Corrigir a profundidade da entrada de água ou do furo.',
  },
  'strike.riseBelow': {
    title: 'Água desceu depois da entrada',
    sentence: 'A água encontrada a {strikeM} m teria subido a {riseM} m, o que é mais fundo.',
    why: 'Depois de uma entrada de água, o nível fica à sua profundidade ou acima dela.',
    todo: 'Escrever o nível como profundidade abaixo do solo, não como altura de subida.',
  },
  'pump.aboveGround': {
    title: 'Aspiração da bomba acima do solo',
    sentence: 'A aspiração da bomba está registada {heightM} m acima do solo.',
    why: 'As profundidades contam-se para baixo a partir do solo.',
    todo: 'Escrever a profundidade como número positivo.',
  },
  'pump.belowHole': {
    title: 'Aspiração da bomba abaixo do fundo',
    sentence:
      'A aspiração da bomba, a {intakeM} m, fica abaixo do fundo do furo, que tem {depthM} m.',
    why: 'Uma das duas profundidades está errada.',
    todo: 'Corrigir a profundidade da aspiração ou do furo.',
  },
  'pump.belowString': {
    title: 'Aspiração da bomba abaixo da coluna',
    sentence:
      'A aspiração da bomba, a {intakeM} m, fica abaixo da coluna {string}, fechada a {bottomM} m.',
    why: 'Uma bomba não passa um tampão; uma das duas profundidades está errada.',
    todo: 'Corrigir a profundidade da aspiração, ou as peças e a posição da coluna.',
  },
  'pump.inOpenHole': {
    title: 'Aspiração da bomba abaixo da tubagem',
    sentence:
      'A aspiração da bomba, a {intakeM} m, está suspensa no furo nu, abaixo da coluna que acaba a {bottomM} m.',
    why: 'Pedras da parede podem prender uma bomba num furo nu.',
    todo: 'Verificar se é o que se pretende.',
  },
  'pump.inSump': {
    title: 'Aspiração no tubo de decantação',
    sentence: 'A aspiração da bomba, a {intakeM} m, está suspensa no tubo de decantação.',
    why: 'Esse tubo recolhe areia e silte, e a bomba puxá-los-ia.',
    todo: 'Verificar a profundidade da aspiração e a soma das peças.',
  },
  'pump.cylinderBelowIntake': {
    title: 'Bomba ao contrário',
    sentence:
      'O topo do cilindro da bomba, a {cylinderTopM} m, fica abaixo da aspiração, a {intakeM} m.',
    why: 'A aspiração está na ponta inferior da bomba.',
    todo: 'Trocar as duas profundidades, ou corrigir a que está errada.',
  },
  'pump.widerThanCasing': {
    title: 'Bomba mais larga do que a tubagem',
    sentence:
      'A bomba tem {bodyMm} mm de largura; a coluna {string} tem {insideMm} mm por dentro no mais estreito do caminho.',
    why: 'Não pode ter entrado; uma das medidas está errada.',
    todo: 'Corrigir o diâmetro da bomba, ou os diâmetros e as paredes da coluna.',
  },
};
