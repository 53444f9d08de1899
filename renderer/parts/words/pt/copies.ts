import type { copies as english } from '../en/copies.ts';

export const copies: typeof english = {
  title: 'Cópias',
  backups: 'Cópias de segurança',
  about:
    'Uma vez por dia, uma cópia do arquivo é posta numa pasta ao lado dele e lida de volta; guardam-se as cinco mais recentes. As que fizer ficam até que as apague.',
  make: 'Fazer uma cópia agora',
  noBackups: 'Ainda não há cópias.',
  beside: 'Outros arquivos nesta pasta',
  aboutBeside:
    'Para juntar outro arquivo, ponha o ficheiro dele na pasta deste. Ele fica como está.',
  noBeside: 'Não há outro arquivo nesta pasta.',
  columns: {
    file: 'Ficheiro',
    made: 'Escrito',
    wells: 'Furos',
    size: 'Tamanho',
    entry: 'Dado',
  },
  unreadable: 'ilegível',
  megabytes: (figure) => `${figure} MB`,
  restore: 'Repor',
  look: 'Juntar …',
  working: 'A trabalhar …',
  made: (file) => `A cópia ${file} foi feita e lida de volta por inteiro.`,
  restored: (file, aside) =>
    `O arquivo tem outra vez o que tem ${file}. O que tinha antes ficou de lado em ${aside}.`,
  askTitle: 'Repor esta cópia?',
  ask: (file, moment, wells) =>
    `O arquivo passará a ter o que tem ${file}: ${wells} furos, de ${moment}.`,
  askAside:
    'O que tem agora é primeiro posto de lado, como uma cópia própria. Para recuperar só alguns furos, junte antes a cópia.',
  keep: 'Deixar como está',
  toCopies: 'Voltar às cópias',
  takeTitle: (file) => `Juntar ${file}`,
  known: (known, binned) =>
    `De ${known} dos seus furos já está aqui tudo; ${binned} estão no lixo dele e lá ficam.`,
  kinds: {
    new: (n) => (n === 1 ? '1 furo novo' : `${n} furos novos`),
    later: (n) => (n === 1 ? '1 furo continuado lá' : `${n} furos continuados lá`),
    typing: (n) =>
      n === 1
        ? '1 furo espera: o que foi escrito aqui não está em nenhuma revisão'
        : `${n} furos esperam: o que foi escrito aqui não está em nenhuma revisão`,
    apart: (n) =>
      n === 1 ? '1 furo continuado dos dois lados' : `${n} furos continuados dos dois lados`,
    alike: (n) =>
      n === 1
        ? '1 furo tem o número e o lugar de outro daqui'
        : `${n} furos têm o número e o lugar de outros daqui`,
  },
  choices: {
    ours: 'Um só furo; o registo daqui fica por último',
    theirs: 'Um só furo; o outro registo fica por último',
    two: 'Dois furos',
  },
  compare: 'Lado a lado',
  here: (revision, moment) => `Aqui: revisão ${revision}, ${moment}`,
  there: (revision, moment) => `Lá: revisão ${revision}, ${moment}`,
  noDifference: 'Os registos dizem o mesmo.',
  more: (n) => `e mais ${n}`,
  waiting: (n) =>
    n === 1
      ? '1 furo está sem escolha e será deixado.'
      : `${n} furos estão sem escolha e serão deixados.`,
  nothingLost: 'Seja qual for a escolha, todos os registos dos dois ficam entre as revisões.',
  take: 'Juntar',
  taken: (added, continued, joined) =>
    `Acrescentados: ${added}. Continuados: ${continued}. Reunidos: ${joined}.`,
  left: (n) => (n === 1 ? '1 furo foi deixado.' : `${n} furos foram deixados.`),
  differing: (ids) => `Isto é diferente lá, e o que está aqui foi deixado: ${ids}.`,
};
