import type { IssuedWords } from './issued.ts';

export const issuedPortuguese: IssuedWords = {
  heads: {
    number: 'Número',
    name: 'Nome',
    paper: 'Documento',
    revision: 'Revisão',
    day: 'Emitido',
    signers: 'Assinado por',
    hash: 'Início do SHA-256',
    page: 'Página',
  },
  newer: '{n} (agora {newest})',
  unsigned: 'não assinado',
  noName: 'nome ilegível',
  states: {
    addedTo: 'algo foi acrescentado depois',
    changed: 'não se mantém: o ficheiro foi alterado',
    unreadable: 'não pode ser verificada',
  },
  beside: 'Os próprios documentos encontram-se ao lado desta pasta, na pasta do disco {folder}.',
  notBound:
    'Os documentos desta lista foram emitidos: estão guardados tal como eram então. Não são reunidos aqui, pois um PDF alterado de qualquer modo quebra os seus selos; a pasta mostra a revisão mais recente de cada furo, desenhada de novo. Onde um furo tem uma revisão mais recente do que a do documento, ela vem atrás com «agora».',
  hashSays:
    'SHA-256: os primeiros 16 dígitos, sobre todo o ficheiro com todas as suas assinaturas, tal como o arquivo o guardava quando esta pasta foi feita. Um ficheiro com outros dígitos não é o mesmo.',
  sealSays:
    'Uma assinatura sem observação mantinha-se quando esta pasta foi feita. Se um certificado pertence a quem nomeia, cabe ao leitor verificá-lo pela impressão digital.',
};
