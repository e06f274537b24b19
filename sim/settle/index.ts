/**
 * Which presses on a real fixture tell one reading of its panel from another. Each reading is a profile that differs in how its panel
 * acts; all of them are pressed alike on the simulated machine, breadth first, until what a person could see differs. Found this way no
 * shorter row of presses does. Nothing on the way locks the panel, sets all back or sets a strobe. Left out: data on the line, batteries, and how fast a light changes.
 */
export { type Reading, type Seen, type SettlePress, type Tell, tellApart } from './settle.ts';
