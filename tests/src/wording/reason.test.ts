import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reasons, stages } from '#words/reasons/index.ts';
import type { Says } from '#words/rig/index.ts';
import type { RigEvent } from '../../../sim/event/index.ts';
import { openRig, REASON_IDS, type Reason, type ReasonId, type Rig, why } from '../../../sim/rig/index.ts';
import { asked } from '../../../src/wording/fill.ts';
import { reasonStage, reasonText } from '../../../src/wording/index.ts';
import { profileKinds } from '../../../src/wording/kinds.ts';
import { reasonFacts } from '../../../src/wording/reason.ts';
import { rigKinds } from '../../../src/wording/rigKinds.ts';
import { runs } from '../../runs.ts';
import { anyEvent } from '../../sim/rig/events.ts';
import { led, mixed } from '../../sim/rig/sheets.ts';
import { type Scene, scenes } from './scenes.ts';
import { readsWell } from './wording.ts';

const unitOf = (rig: Rig, id: string) => {
	const unit = rig.gear.units.get(id);
	if (!unit) throw new Error(`no ${id} in this rig`);
	return unit;
};

function sceneOf(id: ReasonId): Scene & { readonly reason: Reason } {
	const { rig, fixture } = scenes[id]();
	const reason = why(rig, fixture).find((each) => each.id === id);
	if (!reason) throw new Error(`the scene for ${id} has ${why(rig, fixture).map((each) => each.id)}`);
	return { rig, fixture, reason };
}

describe('the words of the reason trail', () => {
	it('are there for every reason, and for nothing else', () => {
		expect(Object.keys(reasons).sort()).toEqual([...REASON_IDS].sort());
	});

	it('have a title for every stage, and for nothing else', () => {
		expect(Object.keys(stages).sort()).toEqual([...new Set(REASON_IDS.map((id) => id.split('.')[0] ?? ''))].sort());
		for (const id of REASON_IDS) expect(reasonStage({ id })).toMatch(/^[A-Z]/);
	});

	it.each(REASON_IDS)('%s: a rig gives it, and all that its words ask for', (id) => {
		const { rig, fixture, reason } = sceneOf(id);
		const unit = unitOf(rig, fixture);
		const { facts, kinds } = asked(reasons[id] as Says);
		expect(Object.keys(reasonFacts(rig, unit, reason))).toEqual(expect.arrayContaining([...facts]));
		const known = [...Object.keys({ ...rigKinds(rig), ...profileKinds(unit.profile) }), 'theirMode'];
		expect(known).toEqual(expect.arrayContaining([...kinds]));
		readsWell(reasonText(rig, fixture, reason));
	});

	/** What a free seed once found: a damaged line, and every colour slot at 0. */
	const bare: RigEvent[] = [
		{ type: 'desk.output', output: 'a', on: false },
		{ type: 'cable.become', cable: 'c2', change: { minus: 'open' } },
		{ type: 'settings.become', fixture: 'wash-1', change: { work: 'programme', lead: 'on' } },
	];

	it.each([mixed, led])('read well whatever is done to $name', (sheet) => {
		fc.assert(
			fc.property(fc.array(anyEvent(sheet), { maxLength: 30 }), (events) => {
				const rig = openRig(sheet);
				for (const event of events) {
					try {
						if (event.type === 'clock.wait') rig.wait(event.ms);
						else rig.send(event);
					} catch {}
				}
				for (const { id } of sheet.fixtures) for (const reason of why(rig, id)) readsWell(reasonText(rig, id, reason));
			}),
			{ numRuns: runs(60), examples: [[bare]] },
		);
	});
});

describe('what they say', () => {
	const says = (id: ReasonId): string => {
		const { rig, fixture, reason } = sceneOf(id);
		return reasonText(rig, fixture, reason);
	};

	it('gives a level as value and percent, and its band by name and range', () => {
		expect(says('slots.programme')).toBe(
			'Channel 2 (Function) is at 100 (39 %), in 51 to 117: Colour fade. That starts the programme “Colour fade”, at speed 1 of 100.',
		);
		expect(says('slots.ignored')).toBe('Its colour channels, 4 to 9, are ignored.');
	});

	it('names cables, sockets and fixtures as people do', () => {
		expect(says('line.pair-open')).toBe(
			'Both data wires are open on the way, in cable 2 (from wash 1, house left, data out to bar 1, data in), so nothing gets past.',
		);
		expect(says('line.collision')).toBe(
			'Desk, output A and wash 1, house left, data out drive this line at once, so every frame is spoiled.',
		);
		expect(says('source.leader')).toBe(
			'Leader leads this line, and sends its own light laid out as mode “9 channels”.',
		);
		expect(says('line.clean')).toBe('Nothing spoils the signal on the way: it comes by cable 1, cable 2 and cable 3.');
	});

	it('tells the desk’s idea of a fixture from a leader’s', () => {
		expect(says('address.patch-differs')).toBe('The desk has it at start address 11, and it’s set to 12.');
		expect(says('address.mode-differs')).toBe(
			'The leader sends as mode “9 channels”, and this one reads as mode “12 channels”.',
		);
	});

	// symptom: 'The desk has it at start address 11, and it is set to 1', of a panel that says 31. cause: the slot read was told as the one set
	it('tells a follower that reads from slot 1 what its panel says, and that it follows', () => {
		const { rig, fixture } = scenes['drive.line']();
		rig.send({ type: 'desk.patch', fixture, universe: 1, address: 11, mode: 'middle' });
		rig.send({ type: 'settings.become', fixture, change: { work: 'follow', address: 31 } });
		const all = why(rig, fixture).map((reason) => reasonText(rig, fixture, reason));
		expect(all).toContain(
			'The desk has it at start address 11, and its panel says 31. But it follows, and a follower of this kind reads from channel 1 on.',
		);
		expect(all).toContain(
			'As a follower it reads channels 1 to 9 as mode “9 channels”, a footprint of 9. Its panel says start address 31, but a follower of this kind reads from channel 1 on.',
		);
		for (const text of all) expect(text).not.toMatch(/set to 1\b/);
		const { rig: row } = scenes['drive.follow']();
		row.send({ type: 'settings.become', fixture: 'f-1', change: { address: 40 } });
		expect(why(row, 'f-1').map((reason) => reasonText(row, 'f-1', reason))).toContain(
			'As a follower it reads the leader’s channels 1 to 9 as mode “9 channels”, a footprint of 9. Its panel says start address 40, but a follower of this kind reads from channel 1 on.',
		);
	});

	// symptom: all on the line were told of a second sender but that sender itself. cause: what makes its own light was told nothing of the line
	it('tells a leader that its frames meet a desk’s or another leader’s, and no other leader', () => {
		const { rig, fixture } = scenes['line.collision']();
		const leads = (of: Rig, id: string) =>
			why(of, id).flatMap((each) =>
				each.id.startsWith('drive.leading') ? [each.effect, reasonText(of, id, each)] : [],
			);
		expect(leads(rig, fixture)).toEqual([]);
		expect(leads(rig, 'wash-1')).toEqual([
			'cuts',
			'It leads, and desk, output A drives the same line. With more than one sender every frame is spoiled, for all on that line.',
		]);
		const { rig: row } = scenes['drive.leading']();
		expect(leads(row, 'lead')[0]).toBe('passes');
		row.send({ type: 'settings.become', fixture: 'f-2', change: { work: 'held', lead: 'on' } });
		for (const [id, other] of [
			['lead', 'follower 2'],
			['f-2', 'leader'],
		] as const)
			expect(leads(row, id)[1]).toContain(`It leads, and ${other}, data out drives the same line.`);
	});

	// symptom: silence. cause: only what leads was told of its leading
	it('tells what is set to lead and obeys the line or follows that it sends nothing', () => {
		expect(says('drive.leading-not')).toBe(
			'It’s set to lead as well, but it sends nothing while it obeys the line. A leader shows its own colour or programme.',
		);
		const { rig } = scenes['drive.follow']();
		rig.send({ type: 'settings.become', fixture: 'f-1', change: { lead: 'on' } });
		const trail = why(rig, 'f-1').map((reason) => reasonText(rig, 'f-1', reason));
		expect(trail).toContain(
			'It’s set to lead as well, but it sends nothing while it follows. A leader shows its own colour or programme.',
		);
	});

	it('says who would send and does not, and which cable hangs loose', () => {
		expect(says('source.output-off')).toBe('Desk, output A is switched off, so it sends nothing down this line.');
		expect(says('source.leader-off')).toBe(
			'Leader shows light of its own on this line, but isn’t set to lead, so it sends nothing.',
		);
		const { rig } = scenes['drive.follow']();
		rig.send({ type: 'power.switch', fixture: 'lead', on: false });
		rig.wait(2000);
		const trail = why(rig, 'f-3').map((reason) => reasonText(rig, 'f-3', reason));
		expect(trail).toContain('Leader is set to lead this line, but has no power.');
		expect(says('line.cable-loose')).toBe(
			'Cable 2 has a loose end, so nothing comes through it. The other end is in wash 1, house left, data out.',
		);
	});

	// symptom: 'Of its colour slots, 13 to 18, these are up: .'. cause: the words went by whether that stops the light, and on a damaged line it does not
	it('names no colours where none is up, though the line is damaged', () => {
		const { rig, fixture } = scenes['light.flickers']();
		rig.send({ type: 'settings.become', fixture: 'lead', change: { held: 'white', level: 0 } });
		const slots = (of: Rig, id: string) =>
			why(of, id).flatMap((each) => (each.id === 'slots.colours' ? reasonText(of, id, each) : []));
		expect(slots(rig, fixture).join()).not.toMatch(/up: \./);
		const { rig: desk } = scenes['line.one-wire-open']();
		for (let slot = 1; slot <= 40; slot++) desk.send({ type: 'desk.level', universe: 1, slot, level: 0 });
		expect(slots(desk, 'old-1')).toEqual(['All its colour channels, 23 to 25, are at 0, so no colour is asked for.']);
	});

	// symptom: 'Colour slots decide' in the trail, beside 'Colour channels decide' at the desk
	it('names a band as the desk does', () => {
		const { rig } = scenes['line.one-wire-open']();
		const said = why(rig, 'wash-1')
			.map((each) => reasonText(rig, 'wash-1', each))
			.join(' ');
		expect(said).toContain('Colour channels decide');
		expect(said).not.toContain('slots');
	});

	// symptom: told to fit a terminator in the socket that a broken cable is in
	it('asks for no terminator where a cable is plugged in', () => {
		const rig = openRig(mixed);
		rig.send({ type: 'cable.become', cable: 'c2', change: { minus: 'open', plus: 'open' } });
		const said = why(rig, 'wash-1').flatMap((each) =>
			each.id === 'line.no-terminator-yet' ? reasonText(rig, 'wash-1', each) : [],
		);
		expect(said.join()).toMatch(
			/^The line gets to no terminator by cable 2, which is in wash 1, house left, data out\. .*Look at that cable all the same\.$/i,
		);
	});

	it('counts what lies past the end of the universe', () => {
		expect(says('address.past-end')).toBe(
			'Its channels run on to 520, and a universe ends at 512: 8 of them don’t exist, and read as 0.',
		);
	});

	it('says what share of frames a wrong spoils where it is the only one, and leaves it out where there are more', () => {
		expect(says('line.common-open')).toMatch(/That spoils 30 % of the frames\.$/);
		const { rig, fixture } = scenes['line.one-wire-open']();
		rig.send({ type: 'cable.become', cable: 'c3', change: { length: 400 } });
		const wrongs = why(rig, fixture).filter(({ id }) => id.startsWith('line.'));
		expect(wrongs.length).toBeGreaterThan(1);
		for (const wrong of wrongs) expect(reasonText(rig, fixture, wrong)).not.toMatch(/spoils/);
	});

	it('takes the most that a line bears from the line', () => {
		expect(says('line.too-long')).toMatch(/^It is 4\d\d m of cable to here, and 300 m is the most\./);
		expect(says('line.too-many-loads')).toMatch(/^This line carries 34 unit loads, and 32 is the most\./);
	});

	it('warns where it speaks of ultraviolet, of flashes and of a covered lens', () => {
		expect(says('light.ultraviolet')).toBe('Ultraviolet comes out of it: barely seen, still strong. Do not look in.');
		expect(says('light.flashes')).toMatch(/Warn people before they see it\.$/);
		expect(says('lamp.covered')).toMatch(/Cover nothing that is lit: it gets hot\.$/);
	});

	it('says of a bar whose cells differ what each stretch shows, and not the colour they add up to', () => {
		const { rig } = scenes['light.shows']();
		rig.send({ type: 'settings.become', fixture: 'bar-1', change: { mode: 'halves' } });
		// left half blue, right half red; intensity up, shutter open
		for (const [at, level] of [
			[1, 255],
			[7, 255],
			[3, 0],
			[4, 0],
			[2, 0],
			[5, 0],
			[6, 0],
			[8, 0],
			[9, 255],
			[11, 30],
		] as const)
			rig.send({ type: 'desk.level', universe: 1, slot: 10 + at, level });
		const shows = why(rig, 'bar-1').find(({ id }) => id === 'light.shows');
		expect(shows && reasonText(rig, 'bar-1', shows)).toMatch(
			/^What is seen is cells 1 to 4 deep blue, at full, cells 5 to 8 deep red, at full\.$/,
		);
	});
});
