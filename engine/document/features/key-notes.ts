/** What each key is for, in a few words: for completion and hover. */
import type { Key } from '../read/index.ts';

export const KEY_NOTES: Readonly<Record<Key, string>> = {
  scramble: 'the turns that bring a solved cube to the start',
  start: 'the cube at the start as an unfolded net, on the lines below',
  holding: 'how the cube is held: which colour is up and which in front',
  method: 'the stages that are followed, or a method of your own',
  base: 'the colour of the first layer',
  title: 'what the solve is called',
  solver: 'who solved it',
  date: 'when it was',
  time: 'how long it took',
  note: 'words about the whole',
  solve: 'begins another solve',
  sequence: 'begins a sequence that can be called by its name',
  aside: 'branches off from this place: suppose it had been otherwise',
  end: 'ends an aside',
  use: 'makes the names of another file known here',
  goal: 'a goal of your own: a name and the slots whose pieces come home',
  check: 'claims that goals hold here',
  keeps: 'claims that goals are left alone',
  opens: 'says that a goal is opened on purpose, and until when',
  does: 'claims what a sequence does, as cycles of stickers',
  order: 'claims how often a sequence must be repeated until all is as before',
};
