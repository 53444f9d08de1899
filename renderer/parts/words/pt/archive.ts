import type { archive as english } from '../en/archive.ts';

export const archive: typeof english = {
  title: 'Arquivo',
  back: 'Arquivo',
  search: 'Procurar número, lugar, pessoas, notas, terreno',
  newWell: 'Novo furo',
  newLike: 'Novo furo como o último',
  newLikeHint:
    'Retoma o programa, os intervenientes, o lugar até à comuna, o método e os tubos do furo alterado por último',
  columns: {
    number: 'Número',
    name: 'Nome',
    village: 'Aldeia',
    district: 'Distrito',
    state: 'Estado',
    year: 'Ano',
    depth: 'Profundidade (m)',
    findings: 'Observações',
    changed: 'Última alteração',
    match: 'Encontrado em',
  },
  sortBy: (column) => `Ordenar por ${column}`,
  matchIn: {
    number: 'contrato ou licença',
    places: 'lugar',
    people: 'pessoas',
    remarks: 'notas',
    log: 'perfil',
  },
  count: (n) => (n === 1 ? '1 furo' : `${n} furos`),
  countOf: (n, all) => `${n} de ${all} furos`,
  noneFound: (search) =>
    `Nenhum furo corresponde a «${search}». Tente uma parte do número, do nome, do lugar, das pessoas ou das notas.`,
  noneFit: 'Nenhum furo corresponde a todos os filtros. Retire um deles.',
  empty: 'Este arquivo ainda não contém nenhum furo. Crie o primeiro com «Novo furo».',
  noNumber: 'sem número',
  notWritten: 'não indicado',
  reading: 'A ler o arquivo …',
  goingThrough: (left) => `A examinar os furos: faltam ${left}`,
  weights: {
    errors: (n) => (n === 1 ? '1 errada' : `${n} erradas`),
    warnings: (n) => `${n} a rever`,
    nothing: 'nada',
    unknown: 'ainda não examinado',
  },
  filters: {
    label: 'Filtros',
    region: 'Região',
    district: 'Distrito',
    state: 'Estado',
    findings: 'Observações',
    yearFrom: 'Ano de',
    yearTo: 'a',
    method: 'Método',
    pump: 'Bomba',
    client: 'Dono da obra',
    contractor: 'Empreiteiro',
    yield: 'Caudal (m³/h)',
    depthFrom: 'Profundidade (m) de',
    yieldFrom: 'Caudal (m³/h) de',
    more: 'Mais filtros',
    badAmount: (text) => `«${text}» não é um número. Escreva algarismos, como 12,5.`,
    badYear: (text) => `«${text}» não é um ano. Escreva quatro algarismos, como 2026.`,
    worst: { wrong: 'algo errado', look: 'a rever', none: 'nem um nem outro' },
    remove: (filter) => `Retirar o filtro ${filter}`,
    clear: 'Limpar tudo',
    is: (name, value) => `${name}: ${value}`,
    from: (year) => `a partir de ${year}`,
    to: (year) => `até ${year}`,
    searched: (text) => `«${text}»`,
  },
  deeds: {
    label: 'O furo escolhido',
    none: 'Nenhum furo está escolhido',
    open: 'Abrir',
    duplicate: 'Duplicar como modelo',
    duplicateHint:
      'Um novo furo com o mesmo programa, intervenientes, lugar até à comuna, método e tubos; sem medições (Ctrl+D)',
    bin: 'Mover para o lixo',
    binHint: 'Tecla Delete',
    sheets: 'Folhas destes furos num só PDF',
    sheetsHint:
      'As folhas A4 de todos os furos que a lista mostra, pela sua ordem; a pesquisa e os filtros reduzem-na',
    tooMany: (wells, most) =>
      `A lista mostra ${wells} furos; um PDF leva no máximo ${most}. Reduza a lista pela pesquisa ou pelos filtros.`,
    olderSheets: (wells) =>
      wells === 1
        ? 'Um furo tem entradas mais recentes que a sua folha não mostra; abra-o e faça uma revisão.'
        : `${wells} furos têm entradas mais recentes que as suas folhas não mostram; abra-os e faça uma revisão.`,
  },
  views: { label: 'Partes do arquivo', wells: 'Furos', import: 'Importar', copies: 'Cópias' },
  bin: {
    title: 'Lixo',
    show: (n) => `Lixo (${n})`,
    moved: (number) => `${number} foi movido para o lixo.`,
    putBack: 'Repor',
    isBack: (number) => `${number} foi reposto na lista.`,
    empty: 'Esvaziar o lixo',
    isEmpty: 'O lixo está vazio.',
    columns: { revisions: 'Revisões', binned: 'Movido para aqui' },
    toList: 'Voltar aos furos',
    askTitle: 'Esvaziar o lixo?',
    ask: (wells, revisions) =>
      wells === 1
        ? `Um furo desaparece de vez, com todas as suas revisões (${revisions}).`
        : `${wells} furos desaparecem de vez, com todas as suas revisões (${revisions}).`,
    askBackups:
      'As cópias de segurança já feitas guardam-nos até que outras mais recentes as substituam.',
    keep: 'Guardá-los',
    emptied: (wells) =>
      wells === 1 ? 'Um furo desapareceu de vez.' : `${wells} furos desapareceram de vez.`,
    dismiss: 'Fechar esta mensagem',
  },
  map: {
    title: 'Mapa',
    label:
      'Mapa dos furos que correspondem. As setas movem, mais e menos mudam a escala, 0 mostra tudo, Página abaixo e Página acima escolhem o furo seguinte e o anterior, Enter abre-o. Cada furo mostrado aqui também está na lista.',
    splitter: 'Largura da lista',
    show: 'Mostrar o mapa',
    zoomIn: 'Ampliar',
    zoomOut: 'Reduzir',
    all: 'Mostrar tudo',
    north: 'N',
    compass: { north: 'N', south: 'S', east: 'E', west: 'O' },
    metres: (n) => `${n} m`,
    kilometres: (n) => `${n} km`,
    legend: 'Sinais',
    noState: 'sem estado',
    withoutPosition: (n) =>
      n === 1
        ? 'Um furo não tem posição e não está no mapa.'
        : `${n} furos não têm posição e não estão no mapa.`,
    leftOut: (n, most) =>
      `O mapa mostra ${most} furos; mais ${n} correspondem. Filtre para os ver.`,
    nothing: 'Nenhum furo que corresponde tem posição.',
    backdrops: 'Fundo',
    addBackdrop: 'Juntar um limite …',
    addHint: 'Um ficheiro GeoJSON de contornos ou linhas, em WGS 84, até 5 MB',
    added: (name, shapes) =>
      shapes === 1
        ? `${name} está por baixo dos furos.`
        : `${name} (${shapes} formas) está por baixo dos furos.`,
    pointsLeftOut: (n) =>
      n === 1 ? 'Um ponto nele foi deixado de fora.' : `${n} pontos nele foram deixados de fora.`,
    tooLarge: (name) =>
      `${name}: o ficheiro passa de 5 MB. Simplifique os contornos, ou recorte-o à área dos furos.`,
    remove: (name) => `Retirar o fundo ${name}`,
    removed: (name) => `${name} foi retirado.`,
  },
};
