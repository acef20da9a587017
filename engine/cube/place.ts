/** Places in a text, as in LSP: zero-based lines and UTF-16 characters, the end exclusive. */
export interface Position {
  readonly line: number;
  readonly character: number;
}

export interface Range {
  readonly start: Position;
  readonly end: Position;
}

/** A stretch of one line: UTF-16 offsets from its start, the end exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}
