declare module 'damerau-levenshtein' {
  /** Edits (insertions, deletions, substitutions, transpositions) that lead from one text to the other. */
  export default function distance(
    first: string,
    second: string,
  ): { steps: number; relative: number; similarity: number };
}
