import type { templates as english } from '../en/templates.ts';

export const templates: typeof english = {
  title: 'Modelos de papel',
  about:
    'Um modelo põe os nomes, o endereço e os logótipos de uma organização no cabeçalho dos papéis, e diz as legendas e a ressalva à sua maneira. É um ficheiro JSON; escolha-o com as imagens que ele nomeia.',
  issued: 'Os papéis emitidos ficam como foram feitos.',
  add: 'Tomar um modelo de um ficheiro …',
  addPictures: 'Escolher as suas imagens …',
  giveUp: 'Desistir dele',
  waits: (name, pictures) => `Ainda faltam imagens a ${name}: ${pictures}.`,
  several: 'Foi escolhido mais de um modelo. Tome-os um a um, cada qual com as suas imagens.',
  noTemplate:
    'Não há nenhum modelo entre estes ficheiros. Escolha o ficheiro JSON dele com as imagens.',
  empty: 'Ainda não há nenhum modelo. Os papéis não têm cabeçalho.',
  usual: 'Os papéis deste arquivo são feitos com',
  none: 'nenhum modelo',
  changed: (moment) => `tomado em ${moment}`,
  unread: 'ilegível.',
  remove: 'Retirar',
  removeOf: (name) => `Retirar: ${name}`,
  keep: 'Deixar como está',
  askRemoveTitle: 'Retirar este modelo?',
  askRemove: (name) =>
    `${name} sai do arquivo; o ficheiro no seu disco fica. Os papéis feitos com ele também ficam.`,
  askReplaceTitle: 'Substituir este modelo?',
  askReplace: (name) => `${name} já está no arquivo. O ficheiro toma o seu lugar.`,
  replace: 'Substituir',
  taken: (name) => `${name} foi tomado para o arquivo.`,
  chose: (name) => `Os papéis são feitos com ${name}.`,
  choseNone: 'Os papéis são feitos sem modelo.',
  removed: (name) => `${name} foi retirado.`,
};
