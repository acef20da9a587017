/** How sentences speak of a goal: `the cross`, `the 2nd pair`, `“left block”`. */

const TITLES: Readonly<Record<string, string>> = {
  cross: 'the cross',
  corners: 'the first layer',
  middle: 'the middle layer',
  'top cross': 'the top cross',
  'top face': 'the top face',
  'top corners': 'the arrangement of the top corners',
  solved: 'the solved cube',
  'edges placed': 'the arrangement of the top edges',
  'corners placed': 'the arrangement of the top corners',
  'corners turned': 'the solved cube',
  OLL: 'the oriented last layer (OLL)',
  PLL: 'the solved cube (PLL)',
};

export function goalTitle(name: string): string {
  const known = TITLES[name];
  if (known !== undefined) return known;
  return /^\d\w\w pair$/.test(name) || /^[A-Z]/.test(name) || name.endsWith(' block')
    ? `the ${name}`
    : `“${name}”`;
}
