/**
 * The shortest way: the fewest presses that a person's hand can be sure of, from where the learner stands to the drill's goal,
 * worked out part by part. The parts
 * share no hand: each fixture by its panel, the desk by its entries, the line by its plugs, mains, the remote. So the
 * fewest of the whole are the fewest of each, added up.
 */
export { dipWay } from './dip.ts';
export { HAND } from './hold.ts';
export { menuMap } from './menu.ts';
export { stepsBetween } from './tour.ts';
export { fewestPresses, type Hint, hintOn, panelNeeds, shortestWay, wayOn } from './way.ts';
