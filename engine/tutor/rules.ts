/**
 * Which concepts make which intent. Each rule names concepts that must all be there (`a|b`: one of
 * them) and concepts that must not; the heaviest rule that fits wins, and where none fits nothing is
 * guessed.
 */
import type { Intent } from './intents.ts';

type Rule = readonly [intent: Intent, weight: number, needs: string, without?: string];

export const RULES: readonly Rule[] = [
  // Turns named in the question.
  ['compare', 10, '<turns2> compare|correct'],
  ['shorter', 9, 'shorter', 'whatisa <term>'],
  ['how-often', 10, 'howoften|often|stop <turns>', 'order'],
  ['how-often', 8, 'howoften', '<turns> <term> whatisa many'],
  ['how-often', 8, 'howoften do|turnword|stop', '<term> whatisa'],
  ['how-often', 7, 'stop often|when', '<term> whatisa'],
  ['which-way', 10, 'whichway <turns>', '<turns2>'],
  ['which-way', 9, 'way <turns> how|wh|is', '<turns2> correct whatif'],
  ['what-does', 9, 'order <turns>'],
  ['what-does', 9, 'inverse <turns>', 'past'],
  ['what-does', 9, 'mirror <turns>'],
  ['what-does', 9, 'howmanyturns|count <turns>'],
  ['what-does', 8, 'inverse|mirror', 'whatisa <piece> break <term> mistake'],
  ['what-does', 8, 'howmanyturns', '<piece> break'],
  ['what-does', 8, 'effect wh <turns>', 'whatif correct next then'],
  ['what-does', 8, 'effect <turns>', 'whatif correct try <goal> break <piece> next is'],
  ['what-does', 7, 'mean|show <turns>', 'whatif correct next break'],
  ['what-does', 7.5, 'effect wh <place>', 'whatif next break me mistake <goal> <piece>'],
  ['what-does', 7.5, 'whatplace', 'break mistake next <piece> <goal>'],
  ['what-does', 7, 'why <place>', 'break mistake <goal> <piece> not'],
  ['what-does', 7, 'mean <place>', 'break mistake'],
  ['why-broke', 9, 'break why|when <turns>'],
  ['why-broke', 8, 'break past <turns>', 'whatif'],
  ['judge-turns', 8, 'break <turns>'],
  ['judge-turns', 8, '<turns> correct|whatif|done'],
  ['judge-turns', 7, '<turns> try|why|then|not|past'],
  ['judge-turns', 7, '<turns> <goal>|<piece>|is'],
  [
    'judge-turns',
    6,
    'correct one is',
    '<goal> <piece> <term> break missing cube possible next turned swapped case',
  ],
  [
    'judge-turns',
    6,
    'correct turnword is',
    '<goal> <piece> <term> break missing possible next where',
  ],

  // Terms, and what is possible.
  ['explain-term', 8.6, 'sidesmatch why|must', '<turns> <piece>'],
  ['which-order', 9.6, 'otherorder', '<turns>'],
  ['which-order', 9.6, 'first <piece>', 'where break past <place> <turns> turned'],
  ['explain-term', 9, '<term> mean|whatisa'],
  [
    'explain-term',
    8,
    '<term> wh is',
    'next turned <place> <turns> <piece> break mistake case where',
  ],
  ['explain-term', 8.5, '<goal> mean|whatisa', '<turns> <piece> break mistake next <place> case'],
  ['is-possible', 9, 'turned|swapped single possible', '<turns>'],
  ['is-possible', 9, 'turned|swapped possible', '<turns> <piece>'],
  ['is-possible', 8.8, 'turned|swapped single', '<turns> <piece> next wh how'],
  ['is-possible', 8, 'turned|swapped how|why single', '<turns> <piece> next'],
  ['is-possible', 8, 'possible', '<turns> <piece> <goal> next shorter compare <term>'],

  // Losses and mistakes.
  ['why-broke', 9, 'break why|where|when|how|wh', '<turns> help'],
  ['why-broke', 8, 'break past', '<turns>'],
  ['why-broke', 7, 'break <piece>|<place>', '<turns>'],
  ['why-broke', 6, 'return <goal>|one', '<turns>'],
  ['why-broke', 7, 'back past|is <goal>', '<turns> <piece>'],
  ['why-broke', 8, 'why past <goal> not'],
  ['where-wrong', 9, 'mistake where|when|show|wh|why|how', '<turns> <goal> <piece> turned <term>'],
  ['where-wrong', 8, 'mistake past|me', '<turns> <goal> <piece> turned'],
  ['where-wrong', 7, 'mistake <place>', '<turns> <goal> <piece>'],
  ['why-broke', 8, 'mistake <goal> where|when|past', '<turns>'],

  ['why-broke', 8.5, 'happened <goal>|<piece>'],
  ['why-broke', 7.2, 'break <goal>', 'is <turns>'],
  ['where-wrong', 7.5, 'amistake', '<turns> <goal> <piece> turned <term> break'],

  // The last layer's case.
  ['which-case', 8.2, 'whichgoal is|me|past', 'done missing break turnword next'],
  ['which-case', 9, 'case wh|how|show|is', '<turns> possible'],
  ['which-case', 8, 'hold how', '<turns> <piece> stage'],
  ['which-case', 7, 'hold where|wh cube|me', '<turns> <piece> stage <goal>'],
  [
    'which-case',
    7,
    'turnword wh do|is|effect|try me|<goal>|one',
    '<turns> <piece> break next mistake past howmany show correct',
  ],

  ['journey', 9.5, 'travel <piece>|one'],
  ['journey', 9.2, 'how past <piece> arrive', 'break'],
  ['journey', 9.2, 'wh turnword <piece>', 'next break correct should case'],
  ['stage-span', 9.5, 'endword where|when|wh|how <goal>|stage', 'break mistake'],
  ['stage-span', 9.2, 'stage one wh effect', 'next break done me'],
  ['stage-span', 9.2, 'howmanyturns <goal>|stage', 'break mistake next'],

  // Where pieces are.
  ['where-piece', 9, 'where <piece>|<slot>', 'break'],
  ['where-piece', 8.5, '<piece> belong|turned|where', 'break'],
  ['where-piece', 8, '<piece> is|done|how|do|show', 'break'],
  ['where-piece', 9, 'whatin <slot>'],
  ['where-piece', 7, '<slot> wh|where', 'break'],
  [
    'where-piece',
    7,
    'where belong|do|one is|past',
    'break begin mistake <goal> step next turnword me',
  ],
  ['where-piece', 7, 'belong where', 'break begin mistake'],

  // What is done.
  ['which-hold', 9, 'stage wh|show|how', 'next <goal> <piece> break'],
  ['which-hold', 8, 'progress|sofar', 'break <piece> <turns>'],
  [
    'which-hold',
    7,
    'wh done',
    '<goal> <piece> <turns> next break mistake me missing amidone turnword case first stop cube',
  ],
  [
    'which-hold',
    6.5,
    'wh done me',
    '<goal> <piece> <turns> next break mistake missing help turnword first do-now case cube',
  ],
  [
    'which-hold',
    7,
    'where me is',
    '<goal> <piece> <turns> next break mistake begin done turnword first',
  ],
  ['is-done', 8.5, '<goal> missing'],
  ['is-done', 8, '<goal> done is|past', 'how break turnword begin'],
  ['is-done', 8, '<goal> not|mistake', 'break'],
  ['is-done', 7, '<goal> done', 'how begin'],
  ['is-done', 7, '<goal> is|past', 'how help next wh break mean show'],
  ['is-done', 7, '<goal> break is', 'past why where when how wh'],
  ['is-done', 7, 'missing wh|is', '<turns> next'],
  ['is-done', 7, 'cube done is|past', 'how wh next'],
  ['is-done', 7, 'amidone'],
  ['is-done', 5, 'done one is|past', 'how wh why where when <turns> <piece> next'],

  // What comes next.
  ['next-step', 8, 'next', 'break mistake <turns>'],
  ['next-step', 8, 'help', '<turns> break <piece>'],
  ['next-step', 7, 'wh do me', 'past <turns> <piece> break mistake case stage'],
  ['next-step', 7, 'do how <goal>|cube|one', '<turns> <piece> break <term>'],
  ['next-step', 7, 'do how <goal>', '<turns> <piece>'],
  ['next-step', 7, 'show turnword|step', '<turns> break <piece>'],
  ['next-step', 7, 'more show|just|mean|help', '<turns> <piece> <goal>'],
  ['next-step', 7, 'begin how|where|wh', '<turns> <piece> break mistake'],
  ['next-step', 7, 'first wh|where', '<turns> <piece> break'],
  [
    'next-step',
    6,
    'begin|now|step wh|me|where',
    '<turns> <piece> <goal> break mistake past case stage',
  ],
  ['next-step', 5.5, 'wh now', '<turns> <piece> <goal>'],
  ['next-step', 6, 'goon'],
  ['next-step', 7.5, 'wherenow', '<piece> <turns> break mistake'],
  ['next-step', 5, 'step wh|show', '<turns> break past'],
  ['next-step', 5, 'just show|do', '<turns> <piece> <goal> turned swapped'],
];
