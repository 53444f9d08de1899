import type { InterfaceWords } from '../catalogue.ts';

export const saving: InterfaceWords['saving'] = {
  revised: (time, revision) => `Revisão ${revision} guardada às ${time}`,
  kept: (time) => `No disco às ${time}`,
  ahead: (time, revision) => `No disco às ${time}, depois da revisão ${revision}`,
  waiting: 'Ainda não está no disco',
  saving: 'A escrever no disco …',
  refused: (sentence) => `Não está no disco: ${sentence}`,
  reason: 'Motivo da próxima revisão, se houver',
  reasonHint: 'Fica junto da revisão que a próxima gravação fizer; Enter grava',
  unread: (n) =>
    n === 1
      ? 'Uma entrada ainda não pode ser lida. Fica guardada, mas não faz parte da ficha.'
      : `${n} entradas ainda não podem ser lidas. Ficam guardadas, mas não fazem parte da ficha.`,
  parted:
    'Outra janela alterou o mesmo lugar. Escolha qual das versões fica; a outra volta com Anular.',
  takeTheirs: 'Ficar com a da outra janela',
  keepMine: 'Manter a minha',
  again: 'Tentar de novo',
  leave: 'Sair sem ela',
  stays: 'Esta janela fica aberta: nem tudo o que foi escrito está no disco.',
  close: 'Fechar mesmo assim',
  troubles: (n) => (n === 1 ? 'Um problema na ficha:' : `${n} problemas na ficha:`),
  paperIsOlder: (revision) => `Mostra a revisão ${revision}, sem o que foi escrito depois.`,
};
