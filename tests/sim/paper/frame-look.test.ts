import { describe, expect, it } from 'vitest';
import type { Item, Say } from '../../../shared/paper/index.ts';
import type { Mode, Profile } from '../../../shared/profile/index.ts';
import { runs } from '../../runs.ts';
import { freshRig, itemsOf, profileOf, table, unseenItemsOf } from './items.ts';

/** What the profile's own chart makes of the frame, reckoned here from the data alone: no rig is asked. */
function reckon(profile: Profile, mode: Mode, start: number, frame: ReadonlyMap<number, number>): string {
	const at = (n: number): number => frame.get(start + n - 1) ?? 0;
	let dark = false;
	let strobe = 0;
	let taken: { held?: string; programme?: string } | null = null;
	const emitters = new Map<string, number>();
	let intensity = 1;
	let speed = 50;
	for (const slot of [...mode.slots].sort((a, b) => a.at - b.at)) {
		const { drives } = slot;
		if (drives.kind === 'intensity')
			intensity = slot.fine === undefined ? at(slot.at) / 255 : (256 * at(slot.at) + at(slot.fine)) / 65535;
		if (drives.kind === 'emitter')
			emitters.set(drives.emitter, Math.max(emitters.get(drives.emitter) ?? 0, at(slot.at)));
		if (drives.kind === 'speed') speed = 1 + (99 * at(slot.at)) / 255;
		if (drives.kind !== 'bands') continue;
		const band = drives.bands.find(({ from, to }) => from <= at(slot.at) && at(slot.at) <= to);
		const effect = band?.effect;
		if (!band || !effect) continue;
		if (effect.do === 'dark') dark = true;
		if (effect.do === 'strobe') {
			const share = band.to === band.from ? 0 : (at(slot.at) - band.from) / (band.to - band.from);
			strobe = effect.slow + share * (effect.fast - effect.slow);
		}
		if (effect.do === 'held') taken ??= { held: effect.held };
		if (effect.do === 'programme') taken ??= { programme: effect.programme };
	}
	const levels = taken?.held
		? Object.values(profile.held.find(({ id }) => id === taken?.held)?.levels ?? {})
		: [...emitters.values()];
	const programme = profile.programmes.find(({ id }) => id === taken?.programme);
	if (dark || intensity === 0) return 'dark';
	if (programme?.kind === 'strobe') {
		// a strobe programme shows its first colour; its rate is told apart below by its own two ends
		const seconds = programme.slowest * (programme.fastest / programme.slowest) ** ((speed - 1) / 99);
		return `strobe about ${Math.round(1 / seconds)}`;
	}
	if (programme) return `programme ${programme.name}`;
	const percent = Math.round((100 * intensity * Math.max(0, ...levels)) / 255);
	return percent === 0 ? 'dark' : `lit ${percent} ${Math.round(strobe * 10) / 10}`;
}

/** The same of an option. */
function read({ say, facts }: Say): string {
	if (say === 'look-dark') return 'dark';
	if (say === 'look-programme') return `programme ${facts['name']}`;
	return say === 'look-lit' ? `lit ${facts['percent']} ${facts['rate']}` : say;
}

/** Whether an option is what was reckoned. Percent may round another way by one. */
function isSame(reckoned: string, option: string): boolean {
	if (reckoned.startsWith('strobe')) return option.startsWith('lit') && Number(option.split(' ')[2]) > 0;
	const [what, percent, rate] = reckoned.split(' ');
	const [other, otherPercent, otherRate] = option.split(' ');
	if (what !== 'lit' || other !== 'lit') return reckoned === option;
	return Math.abs(Number(percent) - Number(otherPercent)) <= 1 && Math.abs(Number(rate) - Number(otherRate)) <= 0.1;
}

function wrongWith(item: Item): string[] {
	const { ask, key } = item;
	if (ask.form !== 'one' || key.form !== 'one') return ['another form'];
	const profile = profileOf(item);
	const mode = profile.modes.find(({ name }) => name === item.facts['mode']) as Mode;
	const frame = new Map(table(item, 'frame', 2) as [number, number][]);
	const reckoned = reckon(profile, mode, Number(item.facts['start']), frame);
	const right = ask.options.find(({ id }) => id === key.right)?.label as Say;
	const bad: string[] = [];
	if (!isSame(reckoned, read(right))) bad.push(`${reckoned} is not ${read(right)}`);
	// the colour is read off a rig opened anew, on which every level is typed in by hand
	const rig = freshRig(item);
	rig.send({ type: 'desk.recall', levels: [] });
	for (const [slot, level] of frame) rig.send({ type: 'desk.level', universe: 1, slot, level });
	const [fixture] = rig.sheet.fixtures;
	const { light } = rig.look(fixture?.id ?? '');
	if (right.say === 'look-lit' && light.cells.some(({ words }) => words !== right.facts['colour']))
		bad.push(`${light.cells[0]?.words} is not ${right.facts['colour']}`);
	for (const { id, label } of ask.options) {
		if (id === key.right || !isSame(reckoned, read(label))) continue;
		if (label.say !== 'look-lit' || label.facts['colour'] === right.facts['colour']) {
			// two of one brightness and colour: only a rate may part them
			if (label.facts['rate'] === right.facts['rate']) bad.push(`${id} reads as the right one`);
		}
	}
	return bad.map((each) => `${profile.id} ${mode.id} ${JSON.stringify([...frame])}: ${each}`);
}

describe('what a frame does', () => {
	it('is what the chart says, reckoned without a rig, and what a rig opened anew shows; no wrong option is', () => {
		expect(itemsOf('frame-look', runs(48, 10_000)).flatMap(wrongWith).slice(0, 3)).toEqual([]);
	});

	it('is so on fixtures that nobody has seen', () => {
		expect(unseenItemsOf('frame-look', runs(30, 10_000)).flatMap(wrongWith).slice(0, 3)).toEqual([]);
	});
});
