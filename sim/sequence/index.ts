export { type Plan, type PlanLimits, Planner } from './plan.ts';
export { type Search, suspectsByMend } from './search.ts';
export { makeSeconds, type Seconds, secondsFrom } from './seconds.ts';
export { sequence } from './sequence.ts';
export { makeOutcomeTable, type OutcomeTable } from './table.ts';
