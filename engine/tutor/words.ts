/**
 * The words that the tutor listens for, those that look like them and must be left alone, and how
 * contractions and short forms open up.
 */

/** Contractions and the short forms of chat. */
export const OPENED: ReadonlyMap<string, string> = new Map([
  ["isn't", 'is not'],
  ['isnt', 'is not'],
  ["aren't", 'are not'],
  ['arent', 'are not'],
  ["wasn't", 'was not'],
  ['wasnt', 'was not'],
  ["didn't", 'did not'],
  ['didnt', 'did not'],
  ["doesn't", 'does not'],
  ['doesnt', 'does not'],
  ["don't", 'do not'],
  ['dont', 'do not'],
  ["can't", 'can not'],
  ['cant', 'can not'],
  ['cannot', 'can not'],
  ["won't", 'will not'],
  ["shouldn't", 'should not'],
  ["what's", 'what is'],
  ['whats', 'what is'],
  ["where's", 'where is'],
  ['wheres', 'where is'],
  ["who's", 'who is'],
  ["which's", 'which is'],
  ["why's", 'why is'],
  ["how's", 'how is'],
  ["that's", 'that is'],
  ['thats', 'that is'],
  ["it's", 'it is'],
  ['its', 'its'],
  ["there's", 'there is'],
  ["i'm", 'i am'],
  ['im', 'i am'],
  ["i've", 'i have'],
  ['ive', 'i have'],
  ["i'd", 'i would'],
  ["i'll", 'i will'],
  ["let's", 'let us'],
  ['lets', 'let us'],
  ["haven't", 'have not'],
  ["hasn't", 'has not'],
  ['plz', 'please'],
  ['pls', 'please'],
  ['u', 'you'],
  ['ur', 'your'],
  ['r', 'are'],
  ['y', 'why'],
  ['wat', 'what'],
  ['wut', 'what'],
  ['wich', 'which'],
  ['whitch', 'which'],
  ['wer', 'where'],
  ['nxt', 'next'],
  ['idk', 'i do not know'],
  ['gonna', 'going to'],
  ['wanna', 'want to'],
  ['coz', 'because'],
  ['center', 'centre'],
  ['centers', 'centres'],
  ['colour', 'colour'],
  ['color', 'colour'],
  ['gray', 'grey'],
]);

function words(text: string): Set<string> {
  return new Set(text.split(/\s+/).filter((word) => word !== ''));
}

/** Words by which a question is understood; typing errors are mended towards these. */
export const TERMS: ReadonlySet<string> = words(`
  white yellow red orange green blue
  edge edges corner corners piece pieces cubie pair pairs slot slots layer layers face middle centre
  cross solved solve top bottom front back left right upper lower first second third fourth last base belt block
  where why what which when how who next step stage hint help stuck move moves turn turns line sequence algorithm
  broke break breaks broken breaking destroy destroyed ruin ruined wreck wrecked disturb disturbed lose lost mess messed
  spoil spoiled undo undid mistake wrong fault kill killed damage damaged
  done finish finished complete completed reached ready hold holds okay correct good fine still intact kept made achieved progress
  does happen happens happened work works legal valid allowed belong belongs home place placed position located location find
  flipped twisted oriented turned proceed continue should would could about instead after before start beginning
  more another show explain missing left inverse mirror shorter shortest because
  please restore restored return returned answer solution piece's
`);

/** Common words that lie close to a term and are meant as they stand. */
export const KNOWN_WORDS: ReadonlySet<string> = words(`
  while write wrote writes quite wait invented inventor looking read reads reed bread road rode bed led fed rod rid ready already
  here there were wear then than them they this that these those thing things think thinking with without into onto upon
  have has had been being make makes made take takes took taken give gives gave given get gets got going goes gone
  just only very much many most some same such also even ever never always often once twice again back
  your yours mine their our his her its it
  blew glue clue clues true grew greed agree agreed range arrange arranged arrangement
  word words work worked world would wood could good food mood look looks looked book took
  live love lovely move mover moved lie like likes liked lift light list lines lined fine find mind kind wind
  case cases cast cost lost most must mostly close closed lose loose
  face faces fact facts fast last past least
  need needs want wants know knows knew known show shows
  tell told call called say says said ask asks asked
  other others over under between beside near next text test best rest
  cube cubes tube cute cure sure
  time times tire tried try tries trying trigger
  rule rules role ignore forget pretend cross
  pie pier pierce price prize peace
  sent send end ends and hand hands hold stop shop stay play player
  start state states stated still stick sticker stickers
  thank thanks hello hey weather water whether either neither
  mean means meant meaning seem seems seen see
  long short shorter sharper note noted
  line's true false maybe perhaps really actually
  feel felt feels help helped self half
  what's yes yeah yep nope sorry
  bring brings brought through though thought
  put puts pull push insert inserts inserted inserting
  round around ground side sides wide
  simple sample people person
  reach reaches reason reasons repeat repeats
  lots slow slowly allow follow
  number numbers numbered under until unless
  daisy parity permutation orientation
  holding told tops drop drops dropped shape shapes
  earlier later early late pass passed
  lesson listen learn learning
  wall walk talk tall
  song along among belonging
  fall falls fell full
  does dose don't won't
  doing during done down
  better bitter letter latter matter
  everything anything something nothing
`);

/** Words that tell nothing by themselves; a sentence of others is about something else. */
export const COMMON_WORDS: ReadonlySet<string> = words(`
  the and but for not you are was were any all can could may might shall should will would has had did does let its his her him she him
  who what when where which why how that this these those there here then than thus too very much quite rather still yet now again
  please thanks thank okay yes hey hello well also even just only really actually maybe perhaps exactly simply basically kind sort
  use used using uses user uses doing happening sitting standing standing looks looking like get getting got see saw show shown
  cube cubes puzzle solve solves solving solution solver scramble scrambled scrambles colour colours coloured colored sticker stickers
  move moves moving moved turning rotate rotated rotation rotations spin repeat algorithm algorithms alg algs formula method
  side sides face faces hand hands hold holding thing things stuff something someone somebody anybody nobody everyone
  time times place places point points part parts bit moment way ways end ends beginning middle top bottom
  need needs needed must ought supposed able possible impossible allowed
  come comes came coming go goes going went gone become becomes became leave leaves turn turns tell telling told say says said
  correct correctly wrong wrongly properly exactly already finally soon today
  good bad better best worse worst nice easy hard difficult simple fast slow quick
  new old same other others another next last previous every each both either neither one two three four five six seven eight nine ten
  first second third fourth fifth sixth seventh eighth ninth tenth dear tutor friend sir guys dude man mate
  know understand understood explain mean idea question answer problem trouble issue
  about above below over under between into onto from with without within until till while because since though although
  currently present moment far away near off out down upside inside outside
  written write text file line lines
  exist exists belonging matter look after before during
  solved unsolved finished complete completed incomplete
`);
