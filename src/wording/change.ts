import { changes, light as lightWords } from '#words/rig/index.ts';
import type { Sight } from '../../sim/rig/index.ts';
import { describeLight, isDark, type SightLight, warningsFor } from './describe.ts';
import { sentence } from './fill.ts';
import { plainKinds } from './kinds.ts';

/** Least change of brightness (share of full, as the eye sees it) worth a word. Ours, no source: five steps a person can tell in a beam. */
const SEEN = 0.02;
/** Least change of rate worth a word, flashes a second. Ours, no source. */
const SEEN_RATE = 0.5;

/**
 * What a person would notice has changed in a fixture's light, as a sentence for a screen reader; null where nothing has.
 * While a light changes or jumps about by itself, before and after, its colours and brightness are not told one by one.
 * @param name as the sentence calls the fixture
 */
export function describeChange(before: Sight, after: Sight, name: string): string | null {
	const was = before.light;
	const is = after.light;
	const restless = (was.moving && is.moving) || (was.flicker && is.flicker);
	const kind = kindOf(was, is, restless);
	if (!kind) return null;
	const now = [describeLight(is), ...(kind === 'became' ? endings(was, is) : [])].join(', ');
	const facts = { name, now };
	return [sentence(changes[kind], facts, plainKinds), ...newWarnings(was, is)].join(' ');
}

function kindOf(was: SightLight, is: SightLight, restless: boolean): keyof typeof changes | null {
	const flashes = Math.abs(was.flashes - is.flashes) >= SEEN_RATE || was.flashes > 0 !== is.flashes > 0;
	const manner = flashes || was.moving !== is.moving || was.flicker !== is.flicker;
	if (restless && !manner) return null;
	if (is.flicker && !was.flicker) return 'became';
	if (isDark(is.whole)) return isDark(was.whole) ? null : 'wentDark';
	if (isDark(was.whole)) return 'cameUp';
	if (manner || hues(was) !== hues(is)) return 'became';
	const by = is.whole.brightness - was.whole.brightness;
	if (Math.abs(by) < SEEN) return null;
	return by > 0 ? 'brighter' : 'dimmer';
}

/** Colours alone, by cell. */
const hues = (light: SightLight): string => light.cells.map((cell) => cell.words).join();

/** What it did before and does no longer. */
function endings(was: SightLight, is: SightLight): string[] {
	return [
		...(was.flashes > 0 && is.flashes === 0 ? [lightWords.noFlashing] : []),
		...(was.moving && !is.moving ? [lightWords.noMoving] : []),
		...(was.flicker && !is.flicker ? [lightWords.noFlicker] : []),
	];
}

/** Warnings that did not hold before. */
function newWarnings(was: SightLight, is: SightLight): string[] {
	const known = warningsFor(was);
	return warningsFor(is).filter((warning) => !known.includes(warning));
}
