/**
 * The closed vocabulary of understanding: words stand for concepts, whatever their form (by stem) and
 * wherever they stand in the sentence. The trade-off: word order is mostly ignored, so that learners
 * of English are understood; what order alone tells ("is a cross", "a cross is") is left to a few phrases.
 */
import { stemmer } from 'stemmer';

/** Words by concept; each also in the forms that share its stem. */
const VOCABULARY: Readonly<Record<string, string>> = {
  where:
    'where whereabouts locate location position find finding hiding spot search searching seek seen',
  why: 'why reason cause',
  when: 'when since',
  how: 'how',
  wh: 'what which who whose',
  past: 'did was were had has have',
  is: 'is are am be been does do can could will would should may',
  not: 'not never no none nothing',
  break: `break broke broken breaking destroy destroyed ruin ruined wreck wrecked disturb disturbed lose losing lost loose
    mess messed spoil spoilt spoiled undo undid undone kill killed damage damaged gone disappear disappeared vanish
    vanished screw screwed scrambled blame guilty culprit responsible knock knocked`,
  back: 'back restore restored restoring repair repaired return returned',
  mistake: 'mistake error fault slip wrong incorrect bad misstep blunder typo false',
  done: `done finish finished complete completed solved made ready reached fine intact kept
    built together alright hold holds held true there already okay ok correct right over good achieved`,
  missing: 'missing left remain remaining remains lack lacks lacking',
  holds: 'hold holds holding held',
  stage: 'goal goals stage stages phase phases',
  progress: 'progress status overview summary far',
  next: 'next following upcoming afterwards',
  now: 'now',
  then: 'then after',
  begin: 'start begin continue proceed advance onwards further go carry keep',
  help: 'help hint clue tip stuck advice advise suggestion suggest assist confused assistance',
  more: 'more another bigger stronger deeper further again',
  small: 'small little tiny',
  just: 'just simply only',
  show: 'show give tell reveal list name display see',
  do: 'do make solve finish get build fix complete reach place insert take put repair doing handle',
  turnword:
    'turn turns move moves sequence sequences algorithm algorithms alg algs formula solution answer trigger',
  step: 'step steps',
  one: 'one it this that them',
  me: 'i me my we us you one',
  first: 'first before earlier',
  belong: 'belong belongs home go goes sit sits lie lies live lives stay',
  turned: 'turned flipped flip twisted twist oriented orient upside turned misoriented',
  swapped: 'swapped swap exchanged exchange switched switch interchanged',
  correct:
    'right correct ok okay good fine valid legal allowed work works working wise smart useful help helps wrong bad enough',
  try: 'try tried trying if instead could should can may want plan suggest propose guess think thought apply use using going',
  case: 'case cases recognise recognize pattern situation',
  effect:
    'do does effect happen happens change changes affect affects move moves cause result achieve accomplish',
  order: 'order',
  inverse: 'inverse invert inverted reverse reversed backwards undo opposite',
  mirror: 'mirror mirrored mirroring lefthanded left-handed',
  count: 'count counts long length number htm obtm qtm stm etm ftm',
  many: 'many much',
  shorter: 'shorter shortest quicker faster fewer fewest shorten simplify optimal efficient less',
  compare:
    'compare comparing comparison better versus vs difference differ same equal equivalent identical prefer nicer comfortable',
  often: 'often times repeat repeating repeats repetition',
  mean: 'mean means meaning define definition explain explanation describe term word call called',
  possible: 'possible impossible solvable unsolvable legal valid exist reachable parity',
  single: 'only single one two three four just alone',
  way: 'way direction clockwise anticlockwise counterclockwise',
  travel: 'journey path route trace travel travelled history track',
  arrive: 'get got end come came there here land landed',
  endword: 'end ends ended ending begin begins began start starts started starting',
  hold: 'hold holding held grip regrip',
};

/** Phrases of the sentence with its slots. */
const PHRASES: readonly (readonly [RegExp, string])[] = [
  [/\bwhat (?:has |have |is )?happen(?:s|ed|ing)? (?:to|with)\b/, 'happened'],
  [/\b(?:which|what) (?:kind of )?<goal>/, 'whichgoal'],
  [/\bwhat (?:is|are) (?:the )?<place>/, 'whatplace'],
  [/\b(?:a|an|any|the|my|some) (?:mistake|error|fault|slip|typo)\b/, 'amistake'],
  [/^(?:please |ok |and |so )*(?:continue|proceed|go on|carry on|keep going|go ahead)\b/, 'goon'],
  [/\bhow (?:do|to|can|must|should) (?:i |we |you )?turn <turns>/, 'whichway'],
  [/\b(?:go|goes|went|gone|going|do|did|done|get|got) (?:\w+ )?wrong\b/, 'mistake'],
  [/\bhow come\b/, 'why'],
  [
    /^(?:and |so |but )?(?:what|who) (?:is|are|does|do) (?:the |an? )?<goal>(?: (?:mean|do|for|about|all about))*$/,
    'whatisa',
  ],
  [/\bhow (?:does|do) (?:the |an? )?<goal> work\b/, 'whatisa'],
  [/\b(?:another|other|different) order\b/, 'otherorder'],
  [
    /\b(?:sides?|centres?|colours?)\b.*\b(?:match|matching|fit|agree)\b|\bmatch\b.*\b(?:sides?|centres?)\b/,
    'sidesmatch',
  ],
  [
    /\bno longer\b|\bany ?more\b|\bfall(?:s|ing)? apart\b|\bfell apart\b|\bc[ao]mes? apart\b/,
    'break',
  ],
  [/\b(?:comes?|came|coming|goes|get|gets) back\b|\bback (?:again|later)\b/, 'return'],
  [/\bsince when\b/, 'when'],
  [/\bfalls? .*\bapart\b/, 'break'],
  [
    /\bwhere (?:should|do|can|must|to|shall) (?:i |we |you )?(?:look|begin|start|continue|go)\b/,
    'wherenow',
  ],
  [/\bhow far\b|\bso far\b/, 'sofar'],
  [/\bwhat (?:is|are) (?:an?) \b|\bwhat (?:is|are) (?:an? )?<term>/, 'whatisa'],
  [
    /\b(?:what|who) (?:does|do|is|are)? ?(?:the )?(?:an? )?(?:word |term )?(?:<term>|<goal>) (?:mean|means|stand)\b/,
    'whatisa',
  ],
  [/\bhow (?:many|much) (?:times|often)\b|\bhow often\b/, 'howoften'],
  [
    /\b(?:until|till) (?:when|what|where)\b|\bwhen (?:do|should|can|must|to) (?:i |we |you )?stop\b|\bstop\b/,
    'stop',
  ],
  [/\bhow (?:many|long)\b/, 'howmany'],
  [/\bhow many (?:turns?|moves?|quarter)\b/, 'howmanyturns'],
  [/\bleft hand(?:ed)?\b|\bother hand\b|\bfor (?:the |my )?left\b/, 'mirror'],
  [/\bwhat (?:if|about|happens if|would happen if|happens when)\b|\bhow about\b/, 'whatif'],
  [
    /\bwhich (?:way|direction)\b|\bwhat direction\b|\bcounter clockwise\b|\banti clockwise\b/,
    'whichway',
  ],
  [
    /\bwhat (?:is )?(?:in|at|on|inside)\b|\b(?:which|what) (?:piece|edge|corner|one) (?:is |sits |lies )?(?:in|at)\b/,
    'whatin',
  ],
  [/\b(?:am i|are we) (?:done|finished|there|ready|through)\b/, 'amidone'],
  [/\bwhy (?:this|that|it|is that|is this|these|those|so)\b/, 'whythis'],
  [
    /\b(?:the|this|my|that|whole|is|a) (?:cube|puzzle|state|position|solve)\b|\beverything\b|\bcube\b/,
    'cube',
  ],
];

const BY_STEM = new Map<string, Set<string>>();
const BY_WORD = new Map<string, Set<string>>();
for (const [concept, list] of Object.entries(VOCABULARY)) {
  for (const word of list.split(/\s+/)) {
    const own = BY_WORD.get(word) ?? new Set<string>();
    BY_WORD.set(word, own.add(concept));
    const stem = stemmer(word);
    // Short words have no endings to take off, and stems of two letters would meet by chance.
    if (word.length < 5 || stem.length < 4) continue;
    const same = BY_STEM.get(stem) ?? new Set<string>();
    BY_STEM.set(stem, same.add(concept));
  }
}

/** Words of four letters and more that a typing error may be mended towards. */
export const CONCEPT_WORDS: readonly string[] = [...BY_WORD.keys()].filter(
  (word) => word.length > 3,
);

export function conceptsOfWord(word: string): ReadonlySet<string> {
  return BY_WORD.get(word) ?? (word.length > 4 ? BY_STEM.get(stemmer(word)) : undefined) ?? NONE;
}
const NONE: ReadonlySet<string> = new Set();

/** All concepts of a sentence whose slots stand as `<piece>` and so on; slots are concepts, too. */
export function conceptsOf(sentence: string): Set<string> {
  const found = new Set<string>();
  for (const [pattern, concept] of PHRASES) if (pattern.test(sentence)) found.add(concept);
  let turns = 0;
  for (const word of sentence.split(' ')) {
    if (word.startsWith('<')) {
      found.add(word);
      if (word === '<turns>' && ++turns === 2) found.add('<turns2>');
    } else for (const concept of conceptsOfWord(word)) found.add(concept);
  }
  return found;
}
