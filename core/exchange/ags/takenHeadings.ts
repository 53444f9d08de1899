import { reason } from '../reasons/reason.ts';
import { told, type TableTrouble } from '../tables/trouble.ts';
import type { AgsGroup, AgsGroups } from './readGroups.ts';

const headings = (names: string) => names.split(' ');

/** Headings that become fields of a record, by group; LOCA_ID leads to the hole. */
export const takenHeadings: Readonly<Record<string, readonly string[]>> = {
  PROJ: headings('PROJ_ID PROJ_NAME PROJ_CLNT PROJ_CONT PROJ_ENG'),
  LOCA: headings(
    'LOCA_ID LOCA_TYPE LOCA_GL LOCA_DATM LOCA_REM LOCA_FDEP LOCA_STAR LOCA_ENDD LOCA_PURP ' +
      'LOCA_LAT LOCA_LON LOCA_LLZ LOCA_LOCM LOCA_LOCA',
  ),
  HDPH: headings('LOCA_ID HDPH_TOP HDPH_BASE HDPH_TYPE HDPH_CREW HDPH_EXC HDPH_METH HDPH_CONT'),
  HDIA: headings('LOCA_ID HDIA_DPTH HDIA_DIAM'),
  GEOL: headings('LOCA_ID GEOL_TOP GEOL_BASE GEOL_DESC GEOL_LEG GEOL_REM'),
  SAMP: headings('LOCA_ID SAMP_TOP SAMP_BASE SAMP_REF SAMP_TYPE SAMP_DESC SAMP_REM'),
  PIPE: headings('LOCA_ID PIPE_REF PIPE_TOP PIPE_BASE PIPE_DIAM PIPE_TYPE PIPE_CONS PIPE_REM'),
  BKFL: headings('LOCA_ID BKFL_TOP BKFL_BASE BKFL_DESC BKFL_LEG BKFL_REM'),
  WSTG: headings('LOCA_ID WSTG_DPTH WSTG_DTIM WSTG_REM'),
  WSTD: headings('LOCA_ID WSTG_DPTH WSTD_NMIN WSTD_POST'),
  CDIA: headings('LOCA_ID CDIA_DPTH CDIA_DIAM CDIA_REM'),
  MONG: headings('LOCA_ID PIPE_REF MONG_DATE MONG_TYPE MONG_DETL MONG_TRZ MONG_BRZ MONG_REM'),
  MOND: headings('LOCA_ID MOND_DTIM MOND_TYPE MOND_RDNG MOND_UNIT MOND_REM'),
};

/** Groups that are about the file and not about a hole. */
const aboutFile = ['TRAN', 'TYPE', 'UNIT', 'ABBR', 'DICT', 'FILE'];

/** Keys and counters that lead from row to row and say nothing by themselves. */
const leading = ['FILE_FSET', 'SAMP_ID', 'MONG_ID', 'MONG_DIS', 'MOND_REF'];

function leftHeadings({ name, rows }: AgsGroup, taken: readonly string[]): readonly string[] {
  const said = new Set<string>();
  for (const { cells } of rows)
    for (const [heading, text] of cells) if (text !== '') said.add(heading);
  return [...said].filter(
    (heading) => !taken.includes(heading) && !leading.includes(heading) && name !== heading,
  );
}

/** Everything in a file that no field of a record is for, told once by group. */
export function leftOut(file: string, { groups }: AgsGroups): TableTrouble[] {
  return [...groups.values()].flatMap((group): TableTrouble[] => {
    const { name, line, rows } = group;
    if (aboutFile.includes(name) || rows.length === 0) return [];
    const taken = takenHeadings[name];
    const place = { file, line, column: name };
    if (!taken) {
      const says = reason('groupLeft', { group: name, count: rows.length });
      return [{ ...place, ...told(says), kept: false }];
    }
    const left = leftHeadings(group, taken);
    if (left.length === 0) return [];
    const says = reason('headingsLeft', { headings: left.join(', '), group: name });
    return [{ ...place, ...told(says), kept: true }];
  });
}
