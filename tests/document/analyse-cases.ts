/** For each kind of finding a text that has it and one that just has not. */
import type { FindingCode } from '../../engine/document/finding.ts';
import { SOLVED_NET } from './analyse-support.ts';

export interface Case {
  readonly code: FindingCode;
  /** What the text gets wrong, in words. */
  readonly why: string;
  readonly text: string;
  /** Line from 1 and what is underlined there. */
  readonly at: string;
  readonly says: string;
  /** A text that comes near and does not have the finding. */
  readonly nearly: string;
}

const CORNER = "scramble: R U' R'\nbase: yellow\ncross:\n";
/** The corner at UFR turned where it is: its three stickers exchanged. */
const TWISTED = SOLVED_NET.replace('    www\nooo ggg rrr bbb', '    wwg\nooo ggr wrr bbb');

export const CASES: readonly Case[] = [
  {
    code: 'goal-broken',
    why: 'a prime is missing, and the cross never comes back',
    text: `${CORNER}corners:\n  R U R\nmiddle:\n  U`,
    at: '5|R',
    says: "R (turn 1, line 5) breaks the cross and it never comes back: the yellow-red edge is at FR instead of DR after it. R' in place of R (turn 3, line 5) restores it.",
    nearly: `${CORNER}corners:\n  R U R'\nmiddle:\n  U`,
  },
  {
    code: 'goal-carried',
    why: 'the cross comes back only in the next stage',
    text: `${CORNER}corners:\n  R U\nmiddle:\n  R'`,
    at: '5|R',
    says: "R (turn 1, line 5) breaks the cross (the yellow-red edge); it comes back only in a later stage, with R' (turn 3, line 7).",
    nearly: `${CORNER}corners:\n  R U R'\nmiddle:`,
  },
  {
    code: 'goal-passing',
    why: 'an insert lends the cross out',
    text: `${CORNER}corners:\n  R U R'`,
    at: '5|R',
    says: "R (turn 1, line 5) lends the yellow-red edge out of the cross; R' (turn 3, line 5) brings it back.",
    nearly: `${CORNER}corners:\n  U`,
  },
  {
    code: 'goal-not-reached',
    why: 'the corner is in its slot, but twisted',
    text: "scramble: (R U R' U')2\nbase: yellow\ncross:\ncorners:\n  U\nmiddle:\n  U' (U R U' R')2",
    at: '4|corners',
    says: 'The first layer is not reached after U (turn 1, line 5): the yellow-green-red corner is in its slot DFR but turned.',
    nearly: "scramble: (R U R' U')2\nbase: yellow\ncross:\ncorners:\n  (U R U' R')2\nmiddle:\n  U",
  },
  {
    code: 'cross-not-aligned',
    why: 'the cross is one turn of its layer off',
    text: "scramble: D\nbase: yellow\ncross:\n  R R'\ncorners:\n  U",
    at: '3|cross',
    says: "The cross is made, but its sides do not match the centres: D' brings all four edges home at once.",
    nearly: "scramble: D\nbase: yellow\ncross:\n  D'\ncorners:\n  U",
  },
  {
    code: 'not-solved',
    why: 'the last stage is claimed, and a turn is wrong',
    text: 'scramble: R U\nsolved:\n  U R',
    at: '2|solved',
    says: 'The solve does not end solved: the white-green edge is at UB instead of UF',
    nearly: "scramble: R U\nsolved:\n  U' R'",
  },
  {
    code: 'last-turn-missing',
    why: 'one turn of the top is all that is missing',
    text: "scramble: R U\nsolved:\n  U' R' U",
    at: '2|solved',
    says: "One turn is missing at the end: U' solves the cube.",
    nearly: "scramble: R U\nsolved:\n  U' R' U U'",
  },
  {
    code: 'claim-false',
    why: 'a sequence is said to be done for after four times',
    text: "sequence: trigger\n  R U R' U'\n  order: 4",
    at: '3|4',
    says: 'The sequence returns to its start after 6 times, not 4.',
    nearly: "sequence: trigger\n  R U R' U'\n  order: 6",
  },
  {
    code: 'holding-differs',
    why: 'after x2 it is blue that is in front',
    text: 'scramble: R\nx2\nholding: yellow up, green front',
    at: '3|yellow up, green front',
    says: 'Here yellow is up and blue is in front; y2 leads to the holding that is written.',
    nearly: 'scramble: R\nx2\nholding: yellow up, blue front',
  },
  {
    code: 'wide-or-face',
    why: 'faces written in lower case: as wide turns they do not make the cross',
    text: "scramble: R' U' R\nbase: yellow\ncross:\n  r' u r\nsolved:",
    at: "4|r' u r",
    says: "Lower-case letters are wide turns; written as faces this is R' U R, and only that fits what the text claims.",
    nearly: "scramble: r' u' r\nbase: yellow\ncross:\n  r' u r\nsolved:",
  },
  {
    code: 'repeat-or-rotation',
    why: 'two triggers, written with a blank before x2',
    text: "scramble: U R U' R' U R U' R'\nsolved:\n  (R U R' U') x2",
    at: '3| x2',
    says: '“x2” after a bracket is read as a rotation; 2 written close to the bracket repeats it, and only that fits what the text claims.',
    nearly: "scramble: U R U' R' U R U' R'\nsolved:\n  (R U R' U')x2",
  },
  {
    code: 'turns-cancel',
    why: 'a turn is taken back at once',
    text: "scramble: R\nU D U' R'",
    at: "2|U D U'",
    says: "U D U' are together D.",
    nearly: "scramble: R\nU R U' R'",
  },
  {
    code: 'unknown-turn',
    why: 'a token with a stray digit is no turn as a whole',
    text: "scramble: R\nU U2D5 R'",
    at: '2|U2D5',
    says: '“U2D5” is no turn; nothing of it is executed.',
    nearly: "scramble: R\nU U2D R'",
  },
  {
    code: 'unclosed',
    why: 'a bracket is left open',
    text: "scramble: R\n(U R U' R'",
    at: '2|(',
    says: 'The bracket ( has no partner; it is read as if ) stood in its place.',
    nearly: "scramble: R\n(U R) U' R'",
  },
  {
    code: 'unknown-key',
    why: 'a stage is misspelt',
    text: "scramble: R\nmiddel:\n  R'",
    at: '2|middel',
    says: '“middel:” is not a key or a stage of this method; perhaps middle: is meant.',
    nearly: "scramble: R\nmiddle:\n  R'",
  },
  {
    code: 'bad-value',
    why: 'pink is no colour of the cube',
    text: 'base: pink\nR',
    at: '1|pink',
    says: "The value of base: can't be used: “pink” is no colour (white, yellow, green, blue, red, orange).",
    nearly: 'base: Blue\nR',
  },
  {
    code: 'state-impossible',
    why: 'one corner of the net is twisted',
    text: `start:\n${TWISTED}`,
    at: '2|www',
    says: 'No turns lead to this cube:',
    nearly: `start:\n${SOLVED_NET}`,
  },
  {
    code: 'name-unknown',
    why: 'nobody defines the sequence',
    text: 'scramble: R\n@left-insert',
    at: '2|@left-insert',
    says: 'There is no sequence named “@left-insert”.',
    nearly: "scramble: R\n@left-insert\nsequence: Left insert\n  L' U L",
  },
  {
    code: 'name-twice',
    why: 'the second of two definitions',
    text: "sequence: trigger\n  R U R' U'\nsequence: Trigger\n  R' F R F'",
    at: '3|Trigger',
    says: 'The name “trigger” is already given in line 1; that one is used.',
    nearly: "sequence: trigger\n  R U R' U'\nsequence: trigger 2\n  R' F R F'",
  },
  {
    code: 'name-cycle',
    why: 'hen and egg define each other',
    text: 'sequence: hen\n  @egg\nsequence: egg\n  @hen U',
    at: '1|hen',
    says: 'These names define each other: @hen → @egg → @hen.',
    nearly: 'sequence: hen\n  @egg\nsequence: egg\n  U',
  },
  {
    code: 'use-not-found',
    why: 'there is no such file',
    text: 'use: table.moves\nR',
    at: '1|table.moves',
    says: "The file “table.moves” can't be found.",
    nearly: 'note: use table.moves\nR',
  },
  {
    code: 'too-long',
    why: 'a hundred million turns in a dozen signs',
    text: 'scramble: R\n((R U)9999)9999',
    at: '2|((R U)9999)9999',
    says: 'More than 100,000 turns: what lies beyond is done as one step, and goals are judged after it.',
    nearly: 'scramble: R\n((R U)99)99',
  },
  {
    code: 'start-assumed',
    why: 'the scramble is lost',
    text: "cross:\n  R U R'",
    at: '2|R',
    says: 'There is no scramble and no start, so the solve is taken to end solved, and its start is worked out from its turns.',
    nearly: "scramble: R U' R'\ncross:\n  R U R'",
  },
  {
    code: 'base-assumed',
    why: 'nothing but the holding speaks for a base',
    text: "scramble: R2 U2 F2 L2 D R\ncross:\n  R'",
    at: "3|R'",
    says: 'The base is taken to be yellow; base: yellow says so.',
    nearly: "scramble: R2 U2 F2 L2 D R\nwhite cross:\n  R'",
  },
  {
    code: 'count-differs',
    why: 'three turns are no five in any metric',
    text: "scramble: R U M\nM' U' R' // solved (5)",
    at: '2|solved (5)',
    says: '5 turns are written here, but it is 4 in OBTM, 3 in STM and 3 in ETM.',
    nearly: "scramble: R U M\nM' U' R' // solved (4)",
  },
  {
    code: 'prose',
    why: 'a line of words',
    text: "scramble: R\nand this is how it went\nR'",
    at: '2|and this is how it went',
    says: 'This line is read as words, not as turns; nothing of it is executed. // at its beginning makes it a comment.',
    nearly: "scramble: R\n// and this is how it went\nR'",
  },
  {
    code: 'spelling',
    why: 'another spelling of the inverse',
    text: 'scramble: R\nRi',
    at: '2|Ri',
    says: "“Ri” is read as R'.",
    nearly: 'scramble: R\nR’',
  },
  {
    code: 'spoken-notation',
    why: 'turns as they are said',
    text: 'scramble: R\nR prime U two',
    at: '2|R prime U two',
    says: "These are turns in words; written as notation they are R' U2.",
    nearly: "scramble: R\nR' U2",
  },
];
