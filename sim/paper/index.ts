/**
 * Questions that are read from a simulated rig: what a fixture does with a frame, which setting makes a follower follow, which role
 * each of a row must have, what a display says, what to check first, which cautions go with a task, and tasks done on the bench.
 * Each right answer is found by opening the rig and looking, or by asking the finder or the drill; each wrong option is another
 * reading of the same rig, opened and looked at likewise, and plainly not the same. `setRigPaper` and `markRigPaper` set and mark
 * papers with these kinds beside the plain ones.
 *
 * Left out: lights that take more than a few words to tell, what a microphone hears, and rigs too large for the finder to answer
 * at once. What is seen is told as a person would: colours by name, output in percent, a programme by what it does.
 */
export { markRigPaper, RIG_SOURCES, setRigPaper } from './sources.ts';
