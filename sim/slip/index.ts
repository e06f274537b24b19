/**
 * Prep slips: what to press on each fixture's own panel so that it stands as the plan has it, told as keys and counts. The fewest
 * presses come from `sim/drill`, from the panel at its defaults or from what it shows; each is tried on the simulated panel here, and
 * what the display then shows is read off it. Nothing is typed in. Left out: how a slip looks, and its words.
 */
export { type PanelAtRest, panelAtRest, type Slip, type SlipStep, slipFor, slipTask } from './slip.ts';
