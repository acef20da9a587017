/**
 * What people call the stages: the documented table of aliases.
 *
 * A row gives the stage that its aliases mean in each method: `native` in methods whose own names
 * they are (these tell which method a text follows), `also` where they are understood as well.
 * Aliases are written in lower case, words apart by one space, without colour, count and ordinal;
 * `pair` as a stage is the pair that the ordinal or the pairs so far tell.
 */

export interface AliasRow {
  readonly aliases: readonly string[];
  readonly native: Readonly<Record<string, string>>;
  readonly also?: Readonly<Record<string, string>>;
  /** The alias that is meant when the colour named is the top's. */
  readonly onTop?: string;
}

const FINAL_OF = {
  layers: 'solved',
  'layers, corners last': 'corners turned',
  CFOP: 'PLL',
  Roux: 'LSE',
  ZZ: 'PLL',
} as const;

export const ALIAS_ROWS: readonly AliasRow[] = [
  {
    aliases: [
      'cross',
      'base cross',
      'bottom cross',
      'first cross',
      'first layer cross',
      'first layer edges',
      'base edges',
      'bottom edges',
    ],
    native: { layers: 'cross', CFOP: 'cross' },
    also: { ZZ: 'EOLine', 'ZZ, cross': 'EOcross' },
    onTop: 'top cross',
  },
  { aliases: ['edges'], native: {}, also: { layers: 'cross', CFOP: 'cross' }, onTop: 'top edges' },
  {
    aliases: [
      'corners',
      'first layer corners',
      'base corners',
      'bottom corners',
      'first layer',
      'base layer',
      'bottom layer',
      'layer 1',
      '1st layer',
    ],
    native: { layers: 'corners' },
    onTop: 'top corners',
  },
  { aliases: ['layer'], native: {}, also: { layers: 'corners' }, onTop: 'solved' },
  { aliases: ['face', 'side'], native: {}, also: { layers: 'corners' }, onTop: 'top face' },
  {
    aliases: [
      'middle',
      'middle layer',
      'middle edges',
      'second layer',
      '2nd layer',
      'layer 2',
      'second layer edges',
      'middle layer edges',
      'belt',
    ],
    native: { layers: 'middle' },
    also: { CFOP: '4th pair', ZZ: 'second block', 'ZZ, cross': '4th pair', Roux: 'second block' },
  },
  {
    aliases: ['top cross', 'last layer cross', 'll cross', 'upper cross', 'third layer cross'],
    native: { layers: 'top cross' },
    also: { 'CFOP, two looks': 'EOLL' },
  },
  {
    aliases: [
      'eoll',
      'oll edges',
      'll edge orientation',
      'edge orientation of the last layer',
      'eo ll',
      'top edges turned',
    ],
    native: { CFOP: 'EOLL' },
    also: { layers: 'top cross', 'CFOP, two looks': 'EOLL' },
  },
  {
    aliases: ['top face', 'top side', 'last layer face', 'upper face'],
    native: { layers: 'top face' },
    also: { CFOP: 'OLL' },
  },
  {
    aliases: [
      'oll',
      'orient last layer',
      'orientation of the last layer',
      'last layer orientation',
    ],
    native: { CFOP: 'OLL' },
    also: { layers: 'top face', ZZ: 'OCLL' },
  },
  {
    aliases: [
      'ocll',
      'coll',
      'oll corners',
      'corner orientation',
      'co',
      'top corners turned',
      'turn top corners',
    ],
    native: { ZZ: 'OCLL' },
    also: { layers: 'top face', CFOP: 'OLL' },
  },
  {
    aliases: [
      'top corners',
      'last layer corners',
      'll corners',
      'upper corners',
      'corner permutation',
      'cp',
    ],
    native: { layers: 'top corners' },
    also: { 'CFOP, two looks': 'CPLL', Roux: 'CMLL' },
  },
  { aliases: ['cpll', 'pll corners'], native: { CFOP: 'CPLL' }, also: { layers: 'top corners' } },
  {
    aliases: [
      'pll',
      'permute last layer',
      'permutation of the last layer',
      'last layer permutation',
    ],
    native: { CFOP: 'PLL', ZZ: 'PLL' },
    also: FINAL_OF,
  },
  { aliases: ['epll', 'pll edges'], native: { CFOP: 'PLL' }, also: FINAL_OF },
  {
    aliases: ['ell', 'zbll', 'zb', '1lll', 'one look last layer', 'auf', 'last turn'],
    native: {},
    also: FINAL_OF,
  },
  {
    aliases: ['top edges', 'last layer edges', 'll edges', 'upper edges', 'edge permutation', 'ep'],
    native: { layers: 'solved' },
    also: { CFOP: 'PLL', ZZ: 'PLL', 'layers, corners last': 'edges placed' },
  },
  {
    aliases: ['edges placed', 'place top edges', 'place edges', 'top edges placed'],
    native: { 'layers, corners last': 'edges placed' },
  },
  {
    aliases: ['corners placed', 'place top corners', 'place corners', 'top corners placed'],
    native: { 'layers, corners last': 'corners placed' },
  },
  {
    aliases: ['corners turned', 'turn corners', 'twist corners', 'corners twisted'],
    native: { 'layers, corners last': 'corners turned' },
  },
  {
    aliases: [
      'solved',
      'solve finished',
      'finish',
      'finished',
      'last layer',
      'll',
      'top layer',
      'third layer',
      '3rd layer',
      'layer 3',
      'end',
      'all',
    ],
    native: {},
    also: FINAL_OF,
  },
  {
    aliases: ['f2l', 'first two layers', 'first 2 layers'],
    native: { CFOP: 'pair' },
    also: { layers: 'middle', ZZ: 'second block', 'ZZ, cross': 'pair', Roux: 'second block' },
  },
  {
    aliases: ['pair', 'f2l pair', 'slot', 'f2l slot', 'corner edge pair'],
    native: { CFOP: 'pair' },
    also: { 'ZZ, cross': 'pair' },
  },
  {
    aliases: ['last slot', 'ls', 'last pair'],
    native: { CFOP: '4th pair' },
    also: { 'ZZ, cross': '4th pair' },
  },
  { aliases: ['xcross', 'x cross', 'extended cross'], native: { CFOP: '1st pair' } },
  { aliases: ['xxcross', 'xx cross', 'double x cross'], native: { CFOP: '2nd pair' } },
  { aliases: ['xxxcross', 'xxx cross'], native: { CFOP: '3rd pair' } },
  {
    aliases: ['fb', 'first block', '1st block', 'block 1', 'roux block', 'f1b'],
    native: { Roux: 'first block' },
    also: { ZZ: 'first block' },
  },
  {
    aliases: ['sb', 'second block', '2nd block', 'block 2', 'f2b', 'both blocks', 'blocks'],
    native: { Roux: 'second block' },
    also: { ZZ: 'second block' },
  },
  {
    aliases: ['left block', 'right block', 'zzf2l block'],
    native: { ZZ: 'block' },
    also: { Roux: 'block' },
  },
  { aliases: ['block'], native: { Roux: 'block', ZZ: 'block' } },
  {
    aliases: ['cmll', 'cll', 'corners of the last layer'],
    native: { Roux: 'CMLL' },
    also: { layers: 'top corners' },
  },
  {
    aliases: ['eo', 'edge orientation', 'edges oriented', 'edges turned'],
    native: { Roux: 'EO', ZZ: 'EOLine' },
    also: { layers: 'top cross', 'CFOP, two looks': 'EOLL', 'ZZ, cross': 'EOcross' },
  },
  { aliases: ['lse eo', 'l6e eo', '4a'], native: { Roux: 'EO' } },
  {
    aliases: ['ul ur', 'ulur', 'ul/ur', 'ur ul', 'lr', 'eolr', '4b', 'left and right edges'],
    native: { Roux: 'UL UR' },
  },
  {
    aliases: [
      'lse',
      'l6e',
      'last six edges',
      'last 6 edges',
      'l4e',
      'last four edges',
      'last 4 edges',
      'ep l4e',
      '4c',
    ],
    native: { Roux: 'LSE' },
  },
  { aliases: ['eoline', 'eo line', 'line'], native: { ZZ: 'EOLine' } },
  { aliases: ['eocross', 'eo cross'], native: { ZZ: 'EOcross' }, also: { 'ZZ, cross': 'EOcross' } },
];
