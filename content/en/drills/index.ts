/**
 * Words of the drills: what each kind is called, asks for and is good for; what each condition of a goal asks in words and what
 * was found instead; the next step as a hint; and the pages around them. Templates are filled in `src/wording`, by the grammar in
 * `content/en/rig`, from the facts a drill carries. No answer stands here: what is right is the drill's goal.
 */
export { type ConditionIs, conditions, findings, harms, states } from './conditions.ts';
export { drillWords, levels } from './doing.ts';
export { hintPlaces, hintSteps, hints, holdHints } from './hints.ts';
export { type DrillSays, drills } from './kinds.ts';
export { ownDrills, rigDrills } from './own.ts';
export { progressWords } from './progress.ts';
export { unseenWords } from './unseen.ts';
