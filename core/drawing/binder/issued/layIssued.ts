import { filled } from '../../../base/text/filled.ts';
import type { PaperMm } from '../../../base/units.ts';
import { dayFigure } from '../../figures.ts';
import { flowed } from '../../parts/flow/flow.ts';
import type { Piece } from '../../parts/flow/part.ts';
import { gapPiece, rowPiece, textPieces, type Cell } from '../../parts/flow/pieces.ts';
import type { BinderContent, BinderKit, LaidPart, Places } from '../binder.ts';
import type { BinderWell } from '../binderWell.ts';
import { hashShown } from '../hashShown.ts';
import { districtsOf } from '../order.ts';
import { binderPage, bodyOf, partTitle, partTitleHeight, under } from '../page.ts';
import { counted, sayDistrict, sayNumber } from '../say.ts';
import { sumOf } from '../statistics.ts';
import { linkedRow } from '../tables/linkedRow.ts';
import type { IssuedPaper, Signature } from './issuedPaper.ts';

const shares = [24, 33, 31, 17, 19, 42, 22, 14] as const;

/** Size and languages stand behind the kind as files are named. */
function paperShown({ own }: BinderKit, { kind, paper, languages }: IssuedPaper): string {
  const [, size] = paper.split(' ');
  const named = kind === undefined ? paper : own.papers[kind];
  const sized = kind !== undefined && size !== undefined ? ` ${size}` : '';
  return `${named}${sized}, ${languages.replaceAll(',', ' ')}`;
}

function revisionShown({ own }: BinderKit, { revision, newest }: IssuedPaper): string {
  if (newest <= revision) return String(revision);
  return filled(own.issued.newer, { n: String(revision), newest: String(newest) });
}

function signatureShown({ own }: BinderKit, { name, role, state }: Signature): string {
  const { noName, states } = own.issued;
  const signer = [name === '' ? noName : name, role].filter((text) => text !== '').join(', ');
  return state === 'holds' ? signer : `${signer} (${states[state]})`;
}

function signersShown(kit: BinderKit, { signatures }: IssuedPaper): string {
  if (signatures.length === 0) return kit.own.issued.unsigned;
  return signatures.map((one) => signatureShown(kit, one)).join('; ');
}

type Row = (texts: readonly string[], bold?: boolean) => Cell[];

function rowsOf(
  kit: BinderKit,
  well: BinderWell,
  papers: readonly IssuedPaper[],
  row: Row,
  places: Places,
): Piece[] {
  const page = places.pageOf(well.id);
  const width = sumOf(row([]).map((cell) => cell.width));
  return papers.map((paper) => {
    const cells = row([
      sayNumber(kit, well),
      well.name,
      paperShown(kit, paper),
      revisionShown(kit, paper),
      dayFigure(paper.issuedAt),
      signersShown(kit, paper),
      hashShown(paper.hash),
      places.says(page),
    ]);
    return linkedRow(rowPiece(kit, cells), width, page);
  });
}

function tableOf(
  kit: BinderKit,
  { wells, issued }: BinderContent,
  places: Places,
  width: PaperMm,
): Piece[] {
  const { heads } = kit.own.issued;
  const whole = sumOf(shares);
  const row: Row = (texts, bold = false) =>
    shares.map((share, at) => ({
      width: (share / whole) * width,
      text: texts[at] ?? '',
      anchor: at === shares.length - 1 ? 'end' : 'start',
      bold,
    }));
  const { number, name, paper, revision, day, signers, hash, page } = heads;
  const titles = [number, name, paper, revision, day, signers, hash, page];
  const head = rowPiece(kit, row(titles, true), { rule: 'thin' });
  const papersOf = ({ id }: BinderWell) => issued.papers.filter(({ wellId }) => wellId === id);
  const districts = districtsOf(wells.filter((well) => papersOf(well).length > 0));
  const bodies = districts.flatMap((district): Piece[] => {
    const rows = district.wells.flatMap((well) =>
      rowsOf(kit, well, papersOf(well), row, places).map((piece) => ({ ...piece, head })),
    );
    const text = `${sayDistrict(kit, district.name)}, ${counted(kit.own.counts.papers, rows.length)}`;
    const title = rowPiece(kit, [{ width, text, bold: true }], { rule: 'thin' });
    return [gapPiece(2.4), { ...title, head, keeps: true }, ...rows];
  });
  return [{ ...head, keeps: true }, ...bodies];
}

/** The PDFs that were issued of the binder's wells: each with its seals and its hash. */
export function layIssued(kit: BinderKit, content: BinderContent, places: Places): LaidPart {
  const { parts, issued } = kit.own;
  const { folder } = content.issued;
  const body = bodyOf(kit);
  const says = [
    ...(folder === undefined ? [] : [filled(issued.beside, { folder })]),
    issued.notBound,
    issued.hashSays,
    issued.sealSays,
  ];
  const pieces = [
    ...tableOf(kit, content, places, body.width),
    gapPiece(2.4),
    ...says.flatMap((one) => textPieces(kit, one, body.width)),
  ];
  const pages = flowed(pieces, [under(body, partTitleHeight)]).map((items) =>
    binderPage(kit, content, parts.issued, [partTitle(kit, parts.issued, body), ...items]),
  );
  return { pages, marks: [] };
}
