/** The reader of `.moves` texts: from text to a tree, its blocks and the values of its keys. */
export { readBase, readColour, readHolding, type BaseValue, type HoldingValue } from './colours.ts';
export { cutBlocks, keyLines } from './blocks.ts';
export { executedBody, hasTurns, rotatesOnly } from './executed.ts';
export { readDoes, readGoal, readSlot, type GoalValue } from './pieces.ts';
export { splitLines } from './lines.ts';
export { netStickers } from './net.ts';
export { readDocument } from './read.ts';
export * from './tree.ts';
export * from './values.ts';
export { trimmed } from './words.ts';
