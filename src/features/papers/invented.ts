/** What makes up fixtures for questions about charts; fetched with the first quiz that has some. */
export { inventNames } from '#words/invent/index.ts';
export { inventFixture } from '../../../shared/invent/index.ts';
