import type { ReadingWords } from './reading.ts';

export const readingPortuguese: ReadingWords = {
  finding: {
    title: 'Encontrar um furo',
    says: [
      'Os furos seguem-se por distrito, depois por aldeia, depois por número como se conta: KB-2 vem antes de KB-10.',
      'O índice geral leva aos distritos e às aldeias; os outros índices levam a cada furo por aldeia, número e ano. No ficheiro, uma linha que acaba num número de página é uma ligação.',
      'Um furo sem número está no fim da sua aldeia.',
    ],
  },
  papers: {
    title: 'O que cada documento contém',
    each: {
      asBuilt:
        'Corte do furo como construído: o terreno e o furo em corte a uma escala indicada, com profundidades, enchimentos, níveis de água, ensaios, análises, fotografias e o que falta verificar.',
      layingOut:
        'Plano de colocação: os tubos pela ordem de descida, as marcas e os enchimentos passo a passo.',
      committee:
        'Folha do comité: para os utilizadores da aldeia, com uma imagem simples, os cuidados ao longo do ano, o que manter afastado e a quem ligar.',
      attachments:
        'Anexos: as imagens que nenhuma folha da pasta mostra, e a lista dos outros ficheiros guardados com o registo.',
    },
  },
  depths: {
    title: 'Como se dizem as profundidades',
    says: [
      'As profundidades são metros abaixo do nível do terreno, medidos ao longo do furo. O que está acima do terreno di-lo.',
      'As leituras feitas a partir do topo do revestimento foram trazidas ao terreno pela altura do revestimento.',
      'As altitudes são as do terreno, acima da referência escrita ao lado.',
      'Os documentos de cada furo dizem que revisão da ficha mostram. O arquivo pode ter uma mais recente.',
    ],
  },
  units: {
    title: 'Unidades e sinais dos números',
    says: [
      'm: metros. mm: milímetros, para diâmetros e ranhuras. m³/h: metros cúbicos por hora. mg/l: miligramas por litro.',
      'Um traço (–) está onde nada foi registado: não quer dizer zero. “<” está antes de um limite de deteção abaixo do qual ficou um resultado.',
      'A mediana é o valor do meio: metade dos furos fica abaixo, metade acima.',
    ],
  },
  signs: {
    title: 'Sinais do mapa',
    says: [
      'As posições são WGS 84, tão boas como foram lidas no terreno. Um sinal mostra mais ou menos onde está um furo, não onde escavar.',
    ],
  },
  yields: {
    title: 'O que é um caudal',
    says: [
      'Caudal de exploração: o que o furo pode dar, segundo os ensaios, na estação seca sem rebaixar demais a água.',
      'Onde os ensaios não o dizem, está o caudal do último ensaio a caudal constante, marcado t; senão o da bomba em serviço, marcado p. Dizem o que foi tirado, não o que o furo aguenta.',
    ],
  },
  water: {
    title: 'Qualidade da água',
    says: [
      'Os resultados são comparados com os valores-guia do conjunto indicado. “Acima” diz que um resultado passa de um valor. Nada aqui diz que a água é potável.',
      'Uma amostra diz um só momento: a água pode ser contaminada depois. O que não foi analisado não se conhece. A autoridade de saúde decide o que se pode beber.',
    ],
  },
  cautions: {
    title: 'Cuidados',
    says: [
      'As regras locais e as das autoridades de saúde e da água estão acima de tudo o que está nesta pasta.',
      'Ninguém desce a um poço ou fossa sem controlo de gases, arnês e pessoas à superfície: o ar lá dentro pode matar.',
      'Antes de trabalhar num furo, procurar linhas elétricas e bloquear as bombas elétricas.',
      'Não medir num documento cuja linha de controlo não tenha o comprimento indicado.',
    ],
  },
};
