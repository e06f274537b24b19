import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';

/** Terms of the trade, each read as one short word: whoever reads them here is told what they mean. */
const TRADE =
	/^(fixtures?|address(es)?|terminators?|universes?|programmes?|intensity|facade|battery|batteries|colours?|emitters?|ultraviolet|followers?|leaders?|receivers?|splitters?|defaults?|sensors?|connectors?|footprints?|candela|microphones?|percent|brightness|display|safety)$/i;

/** Grade of a text by Flesch and Kincaid (1975). */
export function gradeOf(text: string): number {
	const sentences = text.split(/[.!?:]+(?=\s|$)|\n\n/).filter((each) => /[a-z]/i.test(each));
	const words = text.match(/[A-Za-z’'-]+/g) ?? [];
	const syllables = words.reduce((sum, word) => sum + (TRADE.test(word) ? 1 : syllable(word)), 0);
	return fleschKincaid({ sentence: sentences.length, word: words.length, syllable: syllables });
}
