import type { AttachmentWords } from './attachments.ts';

export const attachmentsPortuguese: AttachmentWords = {
  title: 'Anexos',
  heads: {
    file: 'Ficheiro',
    shows: 'O que mostra',
    kind: 'Tipo',
    size: 'Tamanho',
    day: 'Dia',
    why: 'Não mostrado',
    hash: 'Início do SHA-256',
  },
  document: 'um documento',
  leftOut: 'deixado fora das folhas à mão',
  states: { absent: 'não está neste arquivo', changed: 'alterado fora do programa' },
  filesSay:
    'Os ficheiros desta lista estão guardados com o registo do furo no arquivo. SHA-256: os primeiros 16 dígitos, sobre o ficheiro tal como foi dado.',
};
