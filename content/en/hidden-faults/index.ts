/** Words of the fault drills: how one begins, what stands round the checks, how it is judged. Checks, faults and mends have theirs elsewhere. */
export { hiddenWords, judgedWords, practisePage } from './words.ts';
