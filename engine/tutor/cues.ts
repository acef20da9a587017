/**
 * The cues of each intent, as patterns over the sentence with its slots and their weights; `ENOUGH`
 * is what it takes. Kept as data so that a phrasing which is not understood becomes a line here.
 */
import type { HelpWanted, Intent } from './intents.ts';

type Cue = readonly [pattern: RegExp, weight: number];

export const ENOUGH = 4;

const BREAK =
  '(?:break|breaks|broke|broken|breaking|destroy|destroys|destroyed|ruin|ruins|ruined|wreck|wrecks|wrecked|disturb|disturbs|disturbed|lose|loses|losing|lost|loose|mess|messes|messed|messing|spoil|spoils|spoiled|spoilt|undo|undid|undone|kill|kills|killed|damage|damaged|gone|disappear|disappeared|vanish|vanished|fall apart|falls apart|fell apart|come apart|came apart|damages|screw|screwed|screws)';
const DONE =
  '(?:done|finish|finished|complete|completed|solve|solved|ok|okay|right|correct|made|ready|hold|holds|held|reached|fine|good|there|still|intact|kept|alright|true|built|over|in place|together|working|valid)';

export const CUES: readonly (readonly [Intent, readonly Cue[]])[] = [
  [
    'why-broke',
    [
      [
        new RegExp(`\\b(?:why|how come|how|when|where|which|what|who|at what)\\b.*\\b${BREAK}\\b`),
        7,
      ],
      [new RegExp(`<(?:goal|piece)>.*\\b${BREAK}\\b|\\b${BREAK}\\b.*<(?:goal|piece)>`), 4],
      [new RegExp(`\\b(?:did|have|has)\\b.*\\b${BREAK}\\b`), 4],
      [new RegExp(`\\b(?:<place>|<turns>)\\b.*\\b${BREAK}\\b`), 2],
      [/\bwhat (?:has )?happen(?:s|ed)? (?:to|with) (?:my |the |this )?(?:<goal>|<piece>)/, 6],
      [
        /\b(?:where|what|when|which|how)\b.*\b(?:mistake|error|go wrong|went wrong|goes wrong|slip|wrong turn|fault|do wrong|did wrong|the problem)\b/,
        6,
      ],
      [
        /\b(?:find|show me|point out|spot) (?:me )?(?:my|the|a) (?:mistake|error|fault|slip|wrong turn)/,
        6,
      ],
      [/\bfalls? .*\bapart\b/, 8],
      [/\bsince when\b.*\b(?:not|wrong|broken)\b/, 5],
      [/\bwhy\b.*\b(?:no longer|not .* any ?more|stop(?:s|ped)? holding|away)\b/, 7],
      [/\b(?:blame|guilty|culprit|responsible)\b/, 5],
      [/\b(?:does|do|will|would) <turns>.*/, -6],
      [
        /\b(?:does|do|did|is) (?:it|<goal>) (?:come|came|return|get) back\b|\b(?:come|came|comes) back\b|\b(?:restored?|repaired)\b/,
        4,
      ],
    ],
  ],
  [
    'judge-turns',
    [
      [/<turns>/, 3],
      [/^<turns>$/, 3],
      [
        /<turns>.*\b(?:right|correct|ok|okay|good|work|works|working|fine|valid|legal|allowed|wrong|bad|help|helps|better|possible|wise|smart|do|idea|enough|way|next)\b/,
        3,
      ],
      [
        /\b(?:right|correct|ok|okay|good|work|works|fine|valid|legal|allowed|wrong|bad|help|helps|better|possible|wise|smart|idea|enough)\b.*<turns>/,
        3,
      ],
      [
        /\b(?:what|how) (?:if|about|happens?|does|do|would|will)\b.*<turns>|\b(?:why not|can|could|should|may|shall|try|tried|trying|would|after|instead|check|judge|does|will|would|is|want|think|thought|plan|suggest|propose|answer|guess|apply|let us|did|do|use|going to)\b.*<turns>/,
        3,
      ],
      [new RegExp(`\\b(?:does|do|will|would|is)\\b.*<turns>.*\\b${BREAK}\\b`), 5],
      [
        /\b(?:is|was|are) (?:this|that|it|these|they) (?:turns? |moves? |sequence )?(?:right|correct|ok|okay|good|fine|wrong|allowed|the right way|a good idea)\b(?!.*<(?:goal|piece)>)/,
        4,
      ],
      [
        /\b(?:check|judge|rate) (?:my|these|this|the) (?:turns?|moves?|sequence|solution|answer)\b/,
        4,
      ],
    ],
  ],
  [
    'where-piece',
    [
      [/\bwhere\b.*<(?:piece|slot)>/, 6],
      [/\bwhere\b.*\b(?:go|goes|belong|belongs|put|home|it|find|hiding)\b/, 3],
      [
        /\b(?:find|locate|location|position|belong|belongs|home|see|spot|look for|looking for|search|searching|hiding|whereabouts)\b.*<piece>|<piece>.*\b(?:location|position|belong|belongs|go|goes|sit|sits|lie|lies|hiding|home|now|at|where)\b/,
        4,
      ],
      [/\b(?:what|which|who)\b.*\b(?:in|at|on|is|sits|lives|occupies)\b.*<slot>/, 6],
      [/<slot>.*\b(?:contain|contains|holds?|what)\b/, 5],
      [
        /\b(?:is|are|was)\b.*<piece>.*\b(?:home|place|placed|turned|right|correct|correctly|flipped|twisted|oriented|solved|slot|position|ok|okay|done|there|way|good|upside|wrong|in)\b/,
        5,
      ],
      [/\bhow\b.*\b(?:get|bring|put|move|insert|place|solve|take)\b.*<piece>/, 5],
      [
        /<piece>.*\b(?:flipped|twisted|turned right|oriented|upside down|where|turned|in place|home)\b/,
        4,
      ],
      [/^(?:and |but |what about |how about |the |now )*<piece>(?: (?:too|then|please|now))*$/, 3],
      [/<piece>/, 1],
      [new RegExp(`\\b(?:why|when|which|did|how)\\b.*\\b${BREAK}\\b`), -3],
      [/<turns>/, -1],
    ],
  ],
  [
    'is-done',
    [
      [
        new RegExp(`\\b(?:is|are|was|were|do|does|did|have|has|had|be)\\b.*<goal>.*\\b${DONE}\\b`),
        6,
      ],
      [new RegExp(`\\b(?:do|does|did|have|has|had|be)\\b.*\\b${DONE}\\b.*<goal>`), 5],
      [
        /\b(?:have|has|did|do|got) (?:i|we|you|it|he|she|they) (?:got |have |get |reach |make |already |really |now |just )*(?:my |the |a )?<goal>/,
        5,
      ],
      [new RegExp(`<goal>.*\\b${DONE}\\b`), 4],
      [
        /\bis (?:this|that|it|there) (?:really |already |now |a |the |an |my |actually |still |even |finally )*<goal>/,
        5,
      ],
      [
        /\b(?:what|which|how many|who)\b.*\b(?:missing|wrong|left|remain|remains|lack|lacks|still)\b/,
        4,
      ],
      [
        /\b(?:what|which|how many) .*\b(?:missing|wrong|left|lack|lacks|need|needs)\b.*<goal>|<goal>.*\b(?:missing|lack|lacks|need|needs|left)\b/,
        3,
      ],
      [
        /\bwhy\b.*\b(?:is|are|does|do|was)\b.*<goal>.*\bnot\b|\bwhy\b.*\bnot\b.*<goal>|\bwhy\b.*<goal>.*\b(?:wrong|bad|incomplete|unfinished|false)\b/,
        6,
      ],
      [/\b(?:am i|are we) (?:done|finished|there|ready|through)\b/, 5],
      [
        /\b(?:is|does|did) (?:it|this|the cube|my cube|that|everything|the whole cube|the puzzle|the whole thing|cube|all|the solve|my solve) (?:\w+ ){0,3}(?:done|solved|finished|complete|completed|solve)\b/,
        5,
      ],
      [/\b(?:check|verify|confirm|test)\b.*<goal>/, 5],
      [/\bsay\b.*<goal>.*\b(?:fine|done|ok|okay)\b/, -8],
      [/<turns>/, -4],
      [/<piece>/, -2],
    ],
  ],
  [
    'which-hold',
    [
      [
        /\b(?:which|what) (?:goals?|stages?|steps?|parts?|layers?)\b.*\b(?:hold|holds|done|reached|finished|complete|completed|solved|made|true|ready|have|kept|intact|ok|okay|right|already)\b/,
        7,
      ],
      [
        /\bwhat (?:is|are|have|has|do)\b.*\b(?:done|finished|hold|holds|solved|so far|achieved|reached|already|accomplished|complete|completed)\b/,
        5,
      ],
      [/\bhow far\b/, 5],
      [
        /\b(?:progress|status|overview|summary|state of (?:the|my) (?:cube|solve)|where (?:am i|are we|do i stand|do we stand))\b/,
        5,
      ],
      [/\bwhat stage\b|\bwhich stage\b|\bwhat step am\b/, 4],
      [/\b(?:list|show|tell me|name)\b.*\b(?:goals|stages)\b/, 5],
      [/\bwhat (?:holds|stands|works|is ready)(?: here| now| so far| already)?(?: <place>)?$/, 5],
      [/<goal>|<turns>|<piece>/, -3],
    ],
  ],
  [
    'next-step',
    [
      [/\bnext\b(?! to)/, 4],
      [
        /\bwhat\b.*\b(?:should|do|can|must|shall|could|would|am i supposed|need|have)\b.*\b(?:do|make|solve|turn|look|next|now|to)\b/,
        3,
      ],
      [
        /\bwhat (?:do|should|can|must|would|could|shall) (?:i|we|you|one|he|she) (?:do|make|solve|turn|look)\b/,
        2,
      ],
      [/\bwhat now\b|\bnow what\b|\bwhat then\b/, 5],
      [/\bwhat (?:comes|is) (?:next|now|after|to do|to be done)\b/, 4],
      [/\bhow\b.*\b(?:go on|continue|proceed|advance|carry on|move on|start|begin)\b/, 5],
      [
        /\bhow\b.*\b(?:solve|finish|make|get|build|fix|complete|repair|do|reach|place|insert)\b.*(?:<goal>|\bit\b|\bthis\b|\bcube\b)/,
        5,
      ],
      [/\b(?:hint|clue|tip|stuck|advice|advise|suggestion|suggest)\b/, 5],
      [
        /\b(?:help|assist)\b(?: me| us| please| now| here| out| again)*(?:$| <| (?:with|on|to|further|the|by)\b)/,
        4,
      ],
      [
        /\bi (?:am|do not know|have no idea|get|got)\b.*\b(?:lost|confused|on|know|what|how|stuck|further)\b/,
        4,
      ],
      [/\b(?:go on|continue|proceed|carry on|keep going|move on)\b/, 4],
      [
        /\bwhere (?:do|should|can) (?:i|we) (?:start|begin|go from here|go now|go next|continue|look)\b/,
        7,
      ],
      [/\bwhere to (?:start|begin|look|continue|go)\b/, 6],
      [
        /\b(?:which|what) (?:piece|edge|corner|pair|one|turn|move|step)\b.*\b(?:should|do|next|first|now|comes|take|insert|to)\b/,
        5,
      ],
      [
        /\b(?:show|tell|give) (?:me |us )?(?:the |some |a |just |only )*(?:turns?|moves?|solution|sequence|answer|way|steps?|algorithm|what to do)\b/,
        5,
      ],
      [/\b(?:just|simply) (?:tell|show|give|do)\b/, 4],
      [
        /\b(?:more help|another hint|one more|more detail|more hints?|more please|tell me more|say more|explain more)\b/,
        5,
      ],
      [/\bfirst (?:step|thing)\b/, 2],
      [/<turns>|<piece>/, -2],
      [new RegExp(`\\b${BREAK}\\b.*<goal>|<goal>.*\\b${BREAK}\\b`), -5],
    ],
  ],
];

/** How much help is asked for. */
export const HELP_CUES: readonly (readonly [RegExp, HelpWanted])[] = [
  [
    /\b(?:just|simply)\b.*\b(?:tell|show|give|do)\b|\b(?:show|tell|give) (?:me |us )?(?:the |some |all |just |only )*(?:turns|moves|solution|sequence|answer|algorithm)\b|\b(?:which|what) (?:turns|moves)\b/,
    3,
  ],
  [
    /\bmore (?:help|hints?|detail|please)\b|\banother hint\b|\b(?:next|bigger|stronger|better|second) hint\b|\bone more\b|\btell me more\b|\bsay more\b|\bexplain more\b|\bnot enough\b|\bstill (?:stuck|lost|do not)\b/,
    'more',
  ],
  [/\bwhy (?:this|that|it|is that|is this)\b|\bexplain\b/, 2],
  [/\b(?:small|little|tiny|first|only a|just a) hint\b/, 1],
];

/** Matters that this tutor does not answer (yet), and talk that is no question about a cube. */
export const OTHER_MATTERS: readonly RegExp[] = [
  /\b(?:ignore|disregard|forget|pretend|override|bypass)\b.*\b(?:rules?|instructions?|before|previous|above|everything|that|prompt)\b/,
  /\b(?:system prompt|you are now|act as|jailbreak|password|api key)\b/,
  /\b(?:inverse|invert|mirror|mirrored|shorter|shortest|optimal|fewest|quickest|fastest|faster|order of|commutator|conjugate|undo my|practi[cs]e|exercise|train|drill)\b/,
  /\bhow (?:many (?:turns|moves|times|states|positions|people)|long|much|old|often)\b/,
  /\b(?:mean|means|meaning|definition|define|what is an?|what are (?!missing|left|done)\w+s$)\b/,
  /\b(?:weather|joke|poem|story|recipe|capital|president|football|music|movie|stock|price|buy|your name|who made|who are you|world record|invented|inventor)\b/,
];
