/** What the tutor says of sequences, cases, slips, terms and what turns can do, on states that teaching is about. */
import { describe, expect, it } from 'vitest';
import { analyse } from '../../engine/document/analyse.ts';
import { NO_MEMORY, ask } from '../../engine/tutor/tutor.ts';
import { flawsMade } from './flaws.ts';

function talk(text: string, ...questions: string[]): string[] {
  const analysis = analyse(text);
  let memory = NO_MEMORY;
  return questions.map((question) => {
    const reply = ask(analysis, undefined, question, memory);
    memory = reply.memory;
    return reply.answer.text;
  });
}

const LAYERS = 'base: yellow\nmethod: layers\n';
const SOLVED = `scramble: U U'\n${LAYERS}`;

describe('a sequence by itself', () => {
  it("R U R' U' has order 6, inverse U R U' R' and mirror image L' U' L U", () => {
    const said = talk(
      SOLVED,
      "what is the order of R U R' U'",
      'inverse?',
      "mirror R U R' U'",
      "how many turns is M2 U R'",
    );
    expect(said[0]).toContain('Its order is 6');
    expect(said[1]).toContain("is U R U' R'");
    expect(said[2]).toContain("is L' U' L U");
    expect(said[3]).toContain('4 turns');
  });

  it("(R U R' U')3 leaves every edge alone and swaps two pairs of corners", () => {
    const [said] = talk(SOLVED, "what does (R U R' U')3 do?");
    expect(said.match(/exchanges the corners/g)).toHaveLength(2);
    expect(said).not.toContain('edges');
  });

  it("says of U U that U2 does the same, and of R U R' that nothing shorter does", () => {
    expect(talk(SOLVED, 'is there a shorter way for U U')[0]).toMatch(/^Yes: U2 does the same/);
    expect(talk(SOLVED, "is there a shorter way for R U R'")[0]).toMatch(/^No: nothing shorter/);
  });

  it('R L and L R do the same, R U and U R do not', () => {
    expect(talk(SOLVED, 'are R L and L R the same')[0]).toContain('do the same to every cube');
    expect(talk(SOLVED, 'are R U and U R the same')[0]).toContain('do not do the same');
  });

  it('B takes the top to the left, as seen from the front; D the front to the right', () => {
    expect(talk(SOLVED, 'which way does B turn?')[0]).toMatch(
      /as seen from the back\).*top back \(UB\) goes to back left \(BL\)/,
    );
    expect(talk(SOLVED, 'which way does D turn?')[0]).toMatch(
      /as seen from below\).*bottom front \(DF\) goes to bottom right \(DR\)/,
    );
  });
});

describe('how often', () => {
  it("three times R U R' U' take back three times U R U' R'", () => {
    const [said] = talk(
      `scramble: U R U' R' U R U' R' U R U' R'\n${LAYERS}`,
      "how often do I repeat R U R' U'?",
    );
    expect(said).toContain('3 times and stop');
    expect(said).toContain('After 6 times everything is back');
  });
});

describe('cases and how to hold them', () => {
  it("a line lies from left to right for F R U R' U' F'", () => {
    const [said] = talk(`scramble: F U R U' R' F'\n${LAYERS}`, 'which case is this?');
    expect(said).toContain("F R U R' U' F'");
    expect(said).toMatch(/^The case is /);
  });

  it('is no case as long as the layers below are open', () => {
    expect(talk(`scramble: R\n${LAYERS}`, 'which case is this?')[0]).toMatch(
      /^There is no case of the last layer here yet/,
    );
  });
});

describe('the last layer without a clear sign', () => {
  it("no headlights: R' F R' B2 R F' R' B2 R2, and only then look for them", () => {
    const [said, level3] = talk(
      `scramble: R' F R' B2 R F' R' B2 R2 U R' F R' B2 R F' R' B2 R2\n${LAYERS}`,
      'which case is this?',
      'just show me the turns',
    );
    expect(said).toContain('On no side of the white layer do both corners show the same colour');
    expect(level3).toContain('isn’t done after it; look again then');
  });

  it('three edges to go round: hold the finished side at the back and turn the right way', () => {
    const said = talk(`scramble: F2 U L R' F2 L' R U F2\n${LAYERS}`, 'which case is this?');
    expect(said[0]).toContain('anticlockwise as seen from above with yellow down');
    expect(said[0]).toContain("F2 U' L R' F2 L' R U' F2");
  });

  it('two edges left to swap cannot be, and why', () => {
    const [said] = talk(SOLVED, 'two edges are left to swap, is that possible?');
    expect(said).toMatch(/^No, two edges swapped and nothing else wrong cannot come from turns: /);
  });
});

describe('what turns can do', () => {
  it.each([
    ['only one edge is flipped', /^No, one edge flipped/],
    ['only one corner is twisted', /^No, one corner twisted/],
    ['only two edges are swapped', /^No, two edges swapped/],
    ['only two corners are swapped', /^No, two corners swapped/],
    ['can two edges be flipped?', /^Yes, two edges flipped/],
    ['can three corners be twisted?', /^Yes, three corners twisted/],
  ])('%s', (question, answer) => {
    expect(talk(SOLVED, question)[0]).toMatch(answer);
  });

  it.each([
    ['a flipped edge', 'an edge is flipped', 'Turn one edge over in its place', ['w g w', 'g w g']],
  ])(
    'names the flaw of an impossible cube, and the remedy: %s',
    (_, flaw, remedy, [top, front]) => {
      const net = [
        '      w w w',
        '      w w w',
        `      ${top}`,
        `o o o ${front} r r r b b b`,
        'o o o g g g r r r b b b',
        'o o o g g g r r r b b b',
        '      y y y',
        '      y y y',
        '      y y y',
      ];
      const text = `start:\n${net.join('\n')}\n${LAYERS}`;
      for (const said of talk(text, 'is this state possible?', 'what is next?', 'is it solved?')) {
        expect(said).toContain(flaw);
        expect(said).toContain(remedy);
      }
      expect(talk(text, 'only one edge is flipped')[0]).toMatch(/^No, one edge flipped/);
      expect(talk(text, 'what is the order of R U')[0]).toContain('105');
    },
  );

  it('the witness knows turns for each flaw that it calls possible', () => {
    expect(flawsMade()).toEqual(
      expect.arrayContaining(['edges flipped 2', 'corners twisted 2', 'corners twisted 3']),
    );
    expect(flawsMade()).not.toContain('edges flipped 1');
  });
});

describe('mistakes', () => {
  const WRITTEN = `scramble: F' R' U'\n${LAYERS}\ncross:\nU R F'\n`;

  it('one prime too many: the text ends solved with F in place of the third turn', () => {
    const [said] = talk(WRITTEN, 'where did I go wrong?');
    expect(said).toMatch(/^With F in place of F' \(turn 3, line 6\) the text ends solved/);
  });

  it('a proposal with a missing prime is told as such, with turns that work', () => {
    const [said] = talk(`scramble: U R U' R'\n${LAYERS}`, "is this right: R U R U'");
    expect(said).toContain("One turn goes the other way: R U R' U'");
  });
});

describe('terms', () => {
  it('an oriented edge, and how many there are here', () => {
    const [said] = talk(SOLVED, 'what is an oriented edge?');
    expect(said).toContain('shows the top colour on top');
    expect(said).toContain('4 of 4 white edges');
  });

  it('OLL is explained as OLL, whatever the method calls it', () => {
    expect(talk(SOLVED, 'what does OLL mean?')[0]).toMatch(/^OLL is /);
  });
});

describe('the way of a piece', () => {
  it('"why?" after where it is tells which turns took it there', () => {
    const said = talk(
      `scramble: U U'\n${LAYERS}\ncross:\nR U\n`,
      'where is the white-red edge?',
      'why?',
    );
    expect(said[1]).toContain('R (turn 1, line 6) takes it from top right (UR) to back right (BR)');
    expect(said[1]).toContain('It last left its home with R (turn 1, line 6)');
  });
});

it('says so where a regrip lies between two turns that move a piece (F, y, L2)', () => {
  const [said] = talk(`scramble: U U'\n${LAYERS}\ncross:\nF y L2\n`, 'trace the white-green edge');
  expect(said).toMatch(/after a regrip L2 \(turn 2/);
});

describe('the own sequences of a text', () => {
  const NAMED = `scramble: F' U' F U R U R' U'\nholding: yellow up, green front\nbase: white\nmethod: layers\n\nsequence: to the right\nU R U' R' U' F' U F\n`;

  it('come before the way of anybody else', () => {
    const [said] = talk(NAMED, 'just show me the turns');
    expect(said).toContain('@to-the-right');
  });
});
