/** Fixtures that nobody has seen, in this language's words, and the drills on them. A page fetches it with the first one: the words are many. */
import { inventNames } from '#words/invent/index.ts';
import { type Inventor, inventFixture } from '../../../shared/invent/index.ts';
import { unseenWith } from '../../../sim/drill/index.ts';

export const invent: Inventor = (seed, level, without) => inventFixture(seed, level, inventNames, without);

/** What makes a drill on one of them, for `makeDrill`. */
export const unseen = unseenWith(invent);
