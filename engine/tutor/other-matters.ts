/** Matters that this tutor does not answer (yet), and talk that is no question about a cube. */
export const OTHER_MATTERS: readonly RegExp[] = [
  /\b(?:ignore|disregard|forget|pretend|override|bypass)\b.*\b(?:rules?|instructions?|before|previous|above|everything|that|prompt)\b/,
  /\b(?:system prompt|you are now|act as|jailbreak|password|api key)\b/,
  /\b(?:practi[cs]e|exercise|train|drill)\b/,
  /\bhow (?:many (?:states|positions|people)|old)\b/,
  /\b(?:weather|joke|poem|story|recipe|capital|president|football|music|movie|stock|price|buy|your name|who made|who are you|world record|invented|inventor)\b/,
];
