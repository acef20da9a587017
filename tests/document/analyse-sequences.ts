/** What people do on a cube again and again; common practice, no source. */
export const KNOWN_SEQUENCES: readonly string[] = [
  "R U R' U'",
  "R U R'",
  "R U' R'",
  "L' U' L",
  "L' U L",
  "U R U' R'",
  "U' L' U L",
  "F' U2 F",
  "U R U' R' U' F' U F",
  "U' L' U L U F U' F'",
  "F R U R' U' F'",
  "Fw R U R' U' Fw'",
  "R U R' U R U2 R'",
  "R' F R' B2 R F' R' B2 R2",
  "F2 U L R' F2 L' R U F2",
  "M' U2 M",
];
