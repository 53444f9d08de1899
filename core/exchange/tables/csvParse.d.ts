/**
 * The part of the parser's types that the core needs. The package's own declarations bring in
 * Node's, which the core must not see.
 */
export interface Options {
  readonly bom?: boolean;
  readonly delimiter?: string;
  readonly info?: boolean;
  readonly record_delimiter?: string;
  readonly relax_column_count?: boolean;
  readonly relax_quotes?: boolean;
  readonly skip_empty_lines?: boolean;
  readonly skip_records_with_error?: boolean;
  readonly on_skip?: (error: CsvError | undefined) => undefined;
}

export declare class CsvError extends Error {
  readonly code: string;
}

export declare function parse(input: string, options: Options): string[][];
