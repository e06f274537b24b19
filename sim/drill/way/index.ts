/**
 * The shortest way: the fewest presses that a person's hand can be sure of, from where the learner stands to the drill's goal,
 * worked out part by part. The parts
 * share no hand: each fixture by its panel, the desk by its entries, the line by its plugs, mains, the remote. So the
 * fewest of the whole are the fewest of each, added up.
 *
 * For panels this is a second model, beside the fixture's machine: to search the machine itself for two settings picked from
 * lists takes some 14,000 steps, and far more with numbers and holds, while somebody waits for a hint. The fewest presses are reckoned
 * from the menu and the machine's own rules for a step, and the machine checks them: each press of a way is tried on it and must leave
 * one fewer (`sim/drill/way/script.ts`), and tests hold the two together by searching the machine, over every state of a small
 * menu and, seed after seed, on the bundled ones.
 */
export { dipWay } from './dip.ts';
export { HAND } from './hold.ts';
export { menuMap } from './menu.ts';
export { stepsBetween } from './tour.ts';
export { fewestPresses, type Hint, hintOn, panelNeeds, shortestWay, wayOn } from './way.ts';
