import type { InterfaceWords } from '../catalogue.ts';

export const findings: InterfaceWords['findings'] = {
  title: 'Observações',
  none: 'Nenhuma, segundo o que está registado até agora.',
  count: (errors, warnings, notes) => `${errors} erradas, ${warnings} a rever, ${notes} a saber`,
  severity: { error: 'Errado', warning: 'A rever', note: 'A saber' },
  go: 'Ir ao campo',
  source: (source) => `Fonte: ${source}`,
  missing: (n) => `Não avaliado por faltar (${n})`,
  judgedBy: (name, version) => `Avaliado segundo: ${name}, ${version}.`,
  general:
    'A ficha não indica nenhuma regra de boa prática: esta é a geral para o seu modo de furar.',
  unknownPractice: (id) =>
    `A ficha indica a regra de boa prática «${id}», que não está aqui: esta é a geral para o seu modo de furar.`,
};
