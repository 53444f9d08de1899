import type { MapWords } from './map.ts';

export const mapPortuguese: MapWords = {
  overview: 'Mapa de localização: vista geral das folhas',
  sheet: 'Mapa de localização: folha {n} de {of}',
  without: 'Furos sem posição',
  datum: 'WGS 84, graus nas margens de cima e esquerda.',
  grid: 'Cruzes: UTM fuso {zone}, a cada {step} km, nas margens de baixo e direita.',
  backdrop: 'Traços e pontos: contornos do fundo; traços cheios: as outras linhas dele.',
  unnamed: '{n} sinais estão juntos demais para um número.',
  elsewhere: 'Sinais cujo número está noutra folha: {n}.',
  led: 'Um traço fino liga um número ao seu sinal.',
};
