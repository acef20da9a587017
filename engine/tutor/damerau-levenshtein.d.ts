/** The package brings no types. */
declare module 'damerau-levenshtein' {
  interface Distance {
    /** Insertions, deletions, substitutions and transpositions of neighbours. */
    readonly steps: number;
    readonly relative: number;
    readonly similarity: number;
  }
  export default function distance(a: string, b: string, limit?: number): Distance;
}
