/** A heading of a group with the unit and type of its column. */
export type Heading = readonly [heading: string, unit: string, type: string];

/** Of a moment; a day alone is written with the time 00:00:00 and no offset. */
export const momentUnit = 'yyyy-mm-ddThh:mm:ssZ(+hh:mm)';
const dayUnit = 'yyyy-mm-dd';

/**
 * Groups as they are written, their headings in the order of the standard's list; those that would
 * stay empty are left away. Names, units and keys: "AGS 4.1 Dictionary" in
 * github.com/asitha-sena/python-ags4; its types are suggested ones (from memory), and depths are
 * kept to the millimetre.
 */
export const writtenGroups: Readonly<Record<string, readonly Heading[]>> = {
  PROJ: [
    ['PROJ_ID', '', 'ID'],
    ['PROJ_NAME', '', 'X'],
    ['PROJ_LOC', '', 'X'],
    ['PROJ_CLNT', '', 'X'],
    ['PROJ_CONT', '', 'X'],
    ['PROJ_ENG', '', 'X'],
  ],
  TRAN: [
    ['TRAN_ISNO', '', 'X'],
    ['TRAN_DATE', dayUnit, 'DT'],
    ['TRAN_PROD', '', 'X'],
    ['TRAN_STAT', '', 'X'],
    ['TRAN_DESC', '', 'X'],
    ['TRAN_AGS', '', 'X'],
    ['TRAN_RECV', '', 'X'],
    ['TRAN_DLIM', '', 'X'],
    ['TRAN_RCON', '', 'X'],
  ],
  ABBR: [
    ['ABBR_HDNG', '', 'X'],
    ['ABBR_CODE', '', 'X'],
    ['ABBR_DESC', '', 'X'],
  ],
  TYPE: [
    ['TYPE_TYPE', '', 'X'],
    ['TYPE_DESC', '', 'X'],
  ],
  UNIT: [
    ['UNIT_UNIT', '', 'X'],
    ['UNIT_DESC', '', 'X'],
  ],
  LOCA: [
    ['LOCA_ID', '', 'ID'],
    ['LOCA_TYPE', '', 'PA'],
    ['LOCA_GL', 'm', '3DP'],
    ['LOCA_REM', '', 'X'],
    ['LOCA_FDEP', 'm', '3DP'],
    ['LOCA_STAR', dayUnit, 'DT'],
    ['LOCA_PURP', '', 'X'],
    ['LOCA_ENDD', dayUnit, 'DT'],
    ['LOCA_DATM', '', 'X'],
    ['LOCA_LAT', '', 'DMS'],
    ['LOCA_LON', '', 'DMS'],
    ['LOCA_LLZ', '', 'X'],
    ['LOCA_LOCM', '', 'X'],
    ['LOCA_LOCA', '', 'X'],
  ],
  HDPH: [
    ['LOCA_ID', '', 'ID'],
    ['HDPH_TOP', 'm', '3DP'],
    ['HDPH_BASE', 'm', '3DP'],
    ['HDPH_TYPE', '', 'PA'],
    ['HDPH_CREW', '', 'X'],
    ['HDPH_EXC', '', 'X'],
    ['HDPH_METH', '', 'X'],
    ['HDPH_CONT', '', 'X'],
  ],
  HDIA: [
    ['LOCA_ID', '', 'ID'],
    ['HDIA_DPTH', 'm', '3DP'],
    ['HDIA_DIAM', 'mm', '1DP'],
  ],
  GEOL: [
    ['LOCA_ID', '', 'ID'],
    ['GEOL_TOP', 'm', '3DP'],
    ['GEOL_BASE', 'm', '3DP'],
    ['GEOL_DESC', '', 'X'],
    ['GEOL_LEG', '', 'PA'],
    ['GEOL_REM', '', 'X'],
  ],
  SAMP: [
    ['LOCA_ID', '', 'ID'],
    ['SAMP_TOP', 'm', '3DP'],
    ['SAMP_REF', '', 'X'],
    ['SAMP_TYPE', '', 'PA'],
    ['SAMP_ID', '', 'ID'],
    ['SAMP_BASE', 'm', '3DP'],
    ['SAMP_REM', '', 'X'],
  ],
  PIPE: [
    ['LOCA_ID', '', 'ID'],
    ['PIPE_REF', '', 'X'],
    ['PIPE_TOP', 'm', '3DP'],
    ['PIPE_BASE', 'm', '3DP'],
    ['PIPE_DIAM', 'mm', '1DP'],
    ['PIPE_TYPE', '', 'PA'],
    ['PIPE_CONS', '', 'PA'],
    ['PIPE_REM', '', 'X'],
  ],
  BKFL: [
    ['LOCA_ID', '', 'ID'],
    ['BKFL_TOP', 'm', '3DP'],
    ['BKFL_BASE', 'm', '3DP'],
    ['BKFL_DESC', '', 'X'],
    ['BKFL_LEG', '', 'PA'],
    ['BKFL_REM', '', 'X'],
  ],
  WSTG: [
    ['LOCA_ID', '', 'ID'],
    ['WSTG_DPTH', 'm', '3DP'],
    ['WSTG_DTIM', momentUnit, 'DT'],
    ['WSTG_REM', '', 'X'],
  ],
  WSTD: [
    ['LOCA_ID', '', 'ID'],
    ['WSTG_DPTH', 'm', '3DP'],
    ['WSTD_NMIN', 'min', '2DP'],
    ['WSTD_POST', 'm', '3DP'],
  ],
  MONG: [
    ['LOCA_ID', '', 'ID'],
    ['MONG_ID', '', 'X'],
    ['MONG_DIS', 'm', '2DP'],
    ['PIPE_REF', '', 'X'],
    ['MONG_TRZ', 'm', '3DP'],
    ['MONG_BRZ', 'm', '3DP'],
  ],
  MOND: [
    ['LOCA_ID', '', 'ID'],
    ['MONG_ID', '', 'X'],
    ['MONG_DIS', 'm', '2DP'],
    ['MOND_DTIM', momentUnit, 'DT'],
    ['MOND_TYPE', '', 'PA'],
    ['MOND_REF', '', 'X'],
    ['MOND_RDNG', '', 'XN'],
    ['MOND_UNIT', '', 'PU'],
    ['MOND_REM', '', 'X'],
  ],
};

/** What the TYPE and UNIT groups say of each type and unit. */
export const typesSay: Readonly<Record<string, string>> = {
  ID: 'Unique identifier',
  X: 'Text',
  XN: 'Text or number',
  PA: 'Text listed in the ABBR group',
  PU: 'Text listed in the UNIT group',
  DT: 'Date and time, ISO 8601',
  DMS: 'Degrees:minutes:seconds',
  '1DP': 'Value with 1 decimal',
  '2DP': 'Value with 2 decimals',
  '3DP': 'Value with 3 decimals',
};

export const unitsSay: Readonly<Record<string, string>> = {
  m: 'metre',
  mm: 'millimetre',
  min: 'minute',
  [dayUnit]: 'year month day',
  [momentUnit]: 'year month day, hours minutes seconds, offset from UTC',
};
