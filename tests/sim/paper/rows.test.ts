import { describe, expect, it } from 'vitest';
import type { Item } from '../../../shared/paper/index.ts';
import type { Profile, SomeSettings } from '../../../shared/profile/index.ts';
import type { Rig } from '../../../sim/rig/index.ts';
import { runs } from '../../runs.ts';
import { freshRig, itemsOf, lightText, profileOf, setTo, table } from './items.ts';

const heldCalled = ({ held }: Profile, name: unknown): string => held.find((each) => each.name === name)?.id ?? '';
const ids = (rig: Rig): string[] => rig.sheet.fixtures.map(({ id }) => id);
const seen = (rig: Rig, fixture: string): string => lightText(rig.look(fixture));

describe('the setting that makes it follow', () => {
	/** Whether, with this option done on a rig of its own, the whole row goes with its leader through every held colour. */
	function helps(item: Item, rig: Rig, label: Item['facts']): boolean {
		const profile = profileOf(item);
		const fixture = rig.sheet.fixtures.find(({ name }) => name === label['fixture'])?.id ?? '';
		const value = label['value'];
		const change =
			label['key'] === 'mode'
				? { mode: profile.modes.find(({ name }) => name === value)?.id }
				: { [String(label['key'])]: label['key'] === 'held' ? heldCalled(profile, value) : value };
		setTo(rig, fixture, change as SomeSettings);
		const [leader = '', ...followers] = ids(rig);
		const shown = new Set<string>();
		for (const { id } of profile.held.slice(0, 4)) {
			if (rig.gear.units.get(leader)?.state.context.settings.work !== 'held') return false;
			setTo(rig, leader, { held: id });
			shown.add(seen(rig, leader));
			if (followers.some((each) => seen(rig, each) !== seen(rig, leader))) return false;
		}
		return shown.size > 1;
	}

	it('is the only option that helps, each tried by hand on a rig opened anew', () => {
		const wrong = itemsOf('follow-setting', runs(24, 10_000)).flatMap((item) => {
			if (item.ask.form !== 'one' || item.key.form !== 'one') return ['another form'];
			const fresh = freshRig(item);
			const good = item.ask.options.filter(({ label }) => helps(item, fresh.fork(), label.facts)).map(({ id }) => id);
			return good.join() === item.key.right
				? []
				: [`${JSON.stringify(item.facts)}: ${good.join()} for ${item.key.right}`];
		});
		expect(wrong.slice(0, 3)).toEqual([]);
	});

	// a row of switches had two right options: 'obey the line' leaves the address open, and at slot 1 it follows the leader too
	it('never offers to obey the line where that does not say from which slot', () => {
		for (const item of itemsOf('follow-setting', runs(24, 200))) {
			if (item.ask.form !== 'one' || profileOf(item).panel.kind !== 'dip') continue;
			expect(item.ask.options.map(({ label }) => label.facts['value'])).not.toContain('line');
		}
	});
});

describe('roles in a row', () => {
	/** Puts a role on a fixture, as its words say. */
	function play(rig: Rig, fixture: string, role: string, address: number, held: string, follows: number): void {
		const own = { held, lead: 'off' } as const;
		const settings: Record<string, SomeSettings> = {
			'role-desk': { work: 'line', address },
			'role-leader': { ...own, work: 'held', lead: 'on' },
			'role-follower': { work: 'follow', lead: 'off', address: follows },
			'role-alone': { ...own, work: 'held' },
		};
		const { panel } = rig.gear.units.get(fixture)?.profile ?? {};
		const { address: _, ...noAddress } = settings[role] ?? {};
		setTo(rig, fixture, panel?.kind === 'dip' && role !== 'role-desk' ? noAddress : (settings[role] ?? {}));
	}

	/** What a fixture of this kind shows by itself in a held colour. */
	function alone(rig: Rig, held: string): string {
		const [first = ''] = ids(rig);
		play(rig, first, 'role-alone', 1, held, 1);
		return seen(rig, first);
	}

	/** Whether these roles do what the question asks: each line shows what is meant to decide for it, and goes with it. */
	function works(item: Item, fresh: Rig, roles: readonly string[], expected: (held: string) => string): boolean {
		const { facts } = item;
		const profile = profileOf(item);
		const rig = fresh.fork();
		const names = rig.sheet.fixtures.map(({ name }) => name);
		const own = new Map(table(item, 'colours', 2).map(([name, colour]) => [name, heldCalled(profile, colour)]));
		const follows = profile.follows === 'own-address' ? 1 : 201;
		for (const [i, id] of ids(rig).entries())
			play(rig, id, roles[i] ?? '', Number(facts['address']), own.get(names[i] ?? '') ?? '', follows);
		const lines = [facts['first'], facts['second']] as (readonly string[])[];
		const leaders = facts['leaders'] as readonly string[];
		const at = (name: string): string => ids(rig)[names.indexOf(name)] ?? '';
		return lines.every((line, i) => {
			if (line.length === 0) return true;
			if (i === 0 && facts['hasDesk'] === true) {
				const looks = [0, 1].map((turn) => {
					if (turn === 1)
						for (const [slot, level] of (rig.sheet.desk?.levels ?? []).map((each) => [each.slot, each.level] as const))
							rig.send({ type: 'desk.level', universe: 1, slot, level: level > 200 ? 0 : 255 - level });
					return line.map((name) => seen(rig, at(name)));
				});
				const whole = fresh.fork();
				for (const id of ids(whole)) play(whole, id, 'role-desk', Number(facts['address']), '', follows);
				const meant = seen(whole, at(line[0] ?? ''));
				return looks.every((look) => new Set(look).size === 1) && looks[0]?.[0] === meant && looks[1]?.[0] !== meant;
			}
			const leader = leaders.find((name) => line.includes(name)) ?? '';
			const colours = [own.get(leader) ?? '', profile.held.find(({ id }) => id !== own.get(leader))?.id ?? ''];
			return colours.every((held) => {
				const { work } = rig.gear.units.get(at(leader))?.state.context.settings ?? {};
				if (work === 'held') setTo(rig, at(leader), { held });
				return line.every((name) => seen(rig, at(name)) === expected(held));
			});
		});
	}

	it('are the only ones that do, of all that can be given, each tried on a rig opened anew', () => {
		const wrong = itemsOf('row-roles', runs(12, 10_000)).flatMap((item, n) => {
			if (item.ask.form !== 'match' || item.key.form !== 'match') return ['another form'];
			const { left, right } = item.ask;
			// opened anew once, and forked for every try: forks share what happens to them alike, and nothing else
			const fresh = freshRig(item);
			const names = fresh.sheet.fixtures.map(({ name }) => name);
			const asked = names.map((name) => left.find(({ label }) => label.facts['name'] === name)?.id ?? '');
			const key = item.key.right;
			const known = new Map<string, string>();
			const expected = (held: string): string => {
				const text = known.get(held) ?? alone(fresh.fork(), held);
				known.set(held, text);
				return text;
			};
			const all = right.length ** left.length;
			// all of them where they are few; of many, the key, all that are one off, and some of the rest
			const step = all <= 81 ? 1 : Math.ceil(all / 40);
			const codes = Array.from({ length: Math.ceil(all / step) }, (_, i) => (i * step + (n % step)) % all);
			const given = codes.map((code) =>
				left.map((_, i) => right[Math.floor(code / right.length ** i) % right.length]?.id ?? ''),
			);
			const right_ = asked.map((id) => key[id] ?? '');
			return [right_, ...given].flatMap((roles) => {
				const isKey = roles.join() === right_.join();
				const says = roles.map((id) => right.find((each) => each.id === id)?.label.say ?? '');
				return works(item, fresh, says, expected) === isKey
					? []
					: [`${JSON.stringify(item.facts)}: ${says.join()} ${isKey}`];
			});
		});
		expect(wrong.slice(0, 3)).toEqual([]);
	});
});
