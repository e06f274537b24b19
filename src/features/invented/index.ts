/** Fixtures that nobody has seen, in this language's words. A page fetches it with the first one: the words are many. */
import { inventNames } from '#words/invent/index.ts';
import { type Inventor, inventFixture } from '../../../shared/invent/index.ts';

export const invent: Inventor = (seed, level, without) => inventFixture(seed, level, inventNames, without);
