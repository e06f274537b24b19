import { drillWords } from '#words/drills/index.ts';
import { fetchedWith } from '../../ui/index.ts';

/** A part of a drill whose script is fetched when it is first drawn; it says so while it comes, and when it does not. */
export const Fetched = fetchedWith({ ...drillWords, coming: drillWords.loading }, 'coming');
