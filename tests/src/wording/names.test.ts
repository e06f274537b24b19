import { describe, expect, it } from 'vitest';
import { BUNDLED, SETTING_KEYS, type SettingKey, type SettingValue } from '../../../shared/profile/index.ts';
import { portsOf } from '../../../shared/sheet/index.ts';
import { openRig } from '../../../sim/rig/index.ts';
import {
	cableName,
	cableText,
	fixtureName,
	modeCalled,
	modeName,
	portText,
	settingTitle,
	settingValueText,
} from '../../../src/wording/index.ts';
import { mixed } from '../../sim/rig/sheets.ts';
import { scenes } from './scenes.ts';
import { hasNoSeams } from './wording.ts';

describe('names', () => {
	it('are those on the sheet', () => {
		const rig = openRig(mixed);
		expect(fixtureName(rig, 'wash-1')).toBe('wash 1, house left');
		expect(portText('wash-1:in', rig)).toBe('wash 1, house left, data in');
		expect(portText('bar-1:out', rig)).toBe('bar 1, data out');
		expect(portText('desk:b', rig)).toBe('desk, output B');
	});

	it('of a splitter count its outputs', () => {
		const { rig } = scenes['line.splitter-off']();
		expect(portText('fan:in', rig)).toBe('splitter, data in');
		expect(portText('fan:3', rig)).toBe('splitter, output 3');
	});

	it('of sockets are all different on one rig', () => {
		const { rig } = scenes['line.splitter-off']();
		const names = portsOf(rig.sheet).map((port) => portText(port, rig));
		expect(new Set(names).size).toBe(names.length);
		for (const name of names) hasNoSeams(name);
	});

	it.each([
		['c1', 'cable 1'],
		['c-12', 'cable 12'],
		['cable-3', 'cable 3'],
		['cable3', 'cable 3'],
		['spare-2', 'cable spare 2'],
		['cyan', 'cable cyan'],
		['cable', 'cable cable'],
	])('of cable %s is %s', (id, name) => {
		expect(cableName(id)).toBe(name);
	});

	it('of a cable say where it runs, as it is plugged now', () => {
		const rig = openRig(mixed);
		expect(cableText(rig, 'c2')).toBe('cable 2 (from wash 1, house left, data out to bar 1, data in)');
		rig.send({ type: 'cable.unplug', cable: 'c2', end: 'to' });
		expect(cableText(rig, 'c2')).toBe('cable 2, plugged into wash 1, house left, data out at one end only');
		rig.send({ type: 'cable.unplug', cable: 'c2', end: 'from' });
		expect(cableText(rig, 'c2')).toBe('cable 2, plugged into nothing');
		rig.send({ type: 'cable.lift', cable: 'c2' });
		expect(cableText(rig, 'c2')).toBe('cable 2');
	});

	it('of modes are the profile’s, or the id where it has no such mode', () => {
		const [profile] = BUNDLED;
		if (!profile) throw new Error('no profile');
		const [mode] = profile.modes;
		const own = { ...profile, modes: [{ ...mode, id: 'own', name: 'Ten of ours' }] } as typeof profile;
		expect(modeName(own, 'own')).toBe('Ten of ours');
		expect(modeName(profile, 'nowhere')).toBe('nowhere');
	});

	it('of bundled modes say channels, with the same number, on screen and in quizzes', () => {
		for (const profile of BUNDLED)
			for (const { id, name } of profile.modes) {
				expect(modeName(profile, id)).not.toMatch(/slot/i);
				expect(modeName(profile, id)).toBe(modeCalled(name));
				expect(modeName(profile, id).match(/\d+/)?.[0]).toBe(name.match(/\d+/)?.[0]);
			}
	});
});

describe('settings in words', () => {
	it('have a title each, all different', () => {
		const titles = SETTING_KEYS.map(settingTitle);
		expect(new Set(titles).size).toBe(SETTING_KEYS.length);
		for (const title of titles) expect(title).toMatch(/^[A-Z]/);
	});

	it.each(BUNDLED.map((profile) => [profile.name, profile] as const))(
		'tell every value of %s from every other',
		(_, profile) => {
			const values: Record<SettingKey, readonly SettingValue[]> = {
				work: ['line', 'held', 'programme', 'follow'],
				lead: ['off', 'on'],
				address: [1, 512],
				mode: profile.modes.map(({ id }) => id),
				held: profile.held.map(({ id }) => id),
				programme: profile.programmes.map(({ id }) => id),
				speed: [1, 100],
				level: [0, 100],
				strobe: [0, 1, 20],
				loss: ['hold', 'dark', 'programme'],
				curve: ['straight', 'square', 'soft'],
				limit: [10, 100],
				sensor: ['open', 'shut'],
				code: [1, 4],
				hearing: [0, 1, 100],
				lock: ['off', 'on'],
				sleep: [0, 1, 120],
			};
			for (const key of SETTING_KEYS) {
				const texts = values[key].map((value) => settingValueText(profile, key, value));
				for (const text of texts) hasNoSeams(text);
				expect(new Set(texts).size).toBe(texts.length);
			}
		},
	);

	it('read as a person would say them', () => {
		const tallow = BUNDLED[0] as (typeof BUNDLED)[number];
		expect(settingValueText(tallow, 'work', 'line')).toBe('data on the line');
		expect(settingValueText(tallow, 'mode', 'long')).toBe('12 channels');
		expect(settingValueText(tallow, 'held', 'red')).toBe('red');
		expect(settingValueText(tallow, 'strobe', 1)).toBe('once a second');
		expect(settingValueText(tallow, 'sleep', 30)).toBe('30 seconds');
	});
});
