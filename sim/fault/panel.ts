import { footprintOf, modeOf, type Settings, type SomeSettings } from '../../shared/profile/index.ts';
import type { RigSheet } from '../../shared/sheet/index.ts';
import type { RigEvent } from '../event/index.ts';
import { canSet, type MeantFixture, meant, meantOf } from './sheet.ts';
import type { Fault, FaultSpot } from './types.ts';

/** A fault that is some settings gone wrong on a keyed panel. */
function setWrong(
	id: string,
	weight: number,
	key: keyof Settings,
	wrong: (
		meant: MeantFixture,
		sheet: RigSheet,
	) => readonly (readonly [detail: string, change: SomeSettings, share?: number])[],
	more: Partial<Fault> = {},
): Fault {
	const waysOf = (sheet: RigSheet, at: MeantFixture) =>
		at.isDip || !canSet(at.profile, key) ? [] : wrong(at, sheet).filter(([, change]) => differs(at.settings, change));
	return {
		id,
		family: 'panel',
		weight,
		repair: 'set-panel',
		cautions: [],
		spots: (sheet) =>
			meantOf(sheet).flatMap((at) =>
				waysOf(sheet, at).map(
					([detail, , share]): FaultSpot => ({
						place: at.fixture.id,
						detail,
						...(share === undefined ? {} : { share }),
					}),
				),
			),
		events: (sheet, { place, detail }) => {
			const way = waysOf(sheet, meant(sheet, place)).find(([name]) => name === detail);
			return way ? [{ type: 'settings.become', fixture: place, change: way[1] }] : [];
		},
		...more,
	};
}

const differs = (settings: Settings, change: SomeSettings): boolean =>
	Object.entries(change).some(([key, value]) => settings[key as keyof Settings] !== value);

/** Addresses a fixture ends up at by mistake: one off, where it came from the maker, where its neighbour is. */
function wrongAddresses(
	{ fixture, profile, settings }: MeantFixture,
	sheet: RigSheet,
): [string, SomeSettings, number][] {
	const neighbour = meantOf(sheet).find(
		(other) =>
			other.fixture.id !== fixture.id && other.settings.work === 'line' && other.settings.address !== settings.address,
	);
	const ways: [string, number, number][] = [
		['one-up', Math.min(512, settings.address + 1), 0.3],
		['default', profile.defaults.address, 0.4],
		...(neighbour ? [['neighbour', neighbour.settings.address, 0.3] as [string, number, number]] : []),
	];
	const seen = new Set([settings.address]);
	return ways.flatMap(([detail, address, share]): [string, SomeSettings, number][] => {
		if (seen.has(address)) return [];
		seen.add(address);
		return [[detail, { address }, share]];
	});
}

const byLine = ({ settings }: MeantFixture): boolean => settings.work === 'line' || settings.work === 'follow';
const programmeOf = ({ profile }: MeantFixture, kind: string): string | undefined =>
	profile.programmes.find((each) => each.kind === kind)?.id;
const only = <T>(when: boolean, ...ways: readonly T[]): readonly T[] => (when ? ways : []);

/** One switch the other way. @param number 1 to 10 */
const flipped = (sheet: RigSheet, place: string, number: number): RigEvent[] => [
	{
		type: 'switch.flip',
		fixture: place,
		switch: number,
		up: !(meant(sheet, place).fixture.switches?.[number - 1] ?? false),
	},
];

/** Faults of settings: keyed panels first, then switches. */
export const PANEL: readonly Fault[] = [
	setWrong('wrong-mode', 9, 'mode', (at) =>
		only(
			byLine(at),
			...at.profile.modes.map((mode) => [mode.id, { mode: mode.id }, 1 / (at.profile.modes.length - 1)] as const),
		),
	),
	setWrong('wrong-address', 10, 'address', (at, sheet) =>
		only(
			at.settings.work === 'line' || (at.settings.work === 'follow' && at.profile.follows === 'own-address'),
			...wrongAddresses(at, sheet),
		),
	),
	setWrong('left-on-held', 8, 'work', (at) => only(byLine(at), ['held', { work: 'held' }] as const)),
	setWrong('left-on-programme', 7, 'work', (at) =>
		only(byLine(at), [
			'fade',
			{ work: 'programme', programme: programmeOf(at, 'fade') ?? at.settings.programme },
		] as const),
	),
	setWrong('left-on-sound', 5, 'work', (at) =>
		only(at.profile.microphone && at.settings.work !== 'programme', [
			'sound',
			{ work: 'programme', programme: programmeOf(at, 'sound') ?? at.settings.programme },
		] as const),
	),
	setWrong('follower-under-desk', 5, 'work', (at) =>
		only(at.settings.work === 'line', ['follow', { work: 'follow' }] as const),
	),
	setWrong('follower-on-line', 5, 'work', (at) =>
		only(at.settings.work === 'follow', [
			'line',
			{ work: 'line', address: Math.min(512, 1 + footprintOf(modeOf(at.profile, at.settings.mode))) },
		] as const),
	),
	setWrong('leader-not-leading', 6, 'lead', (at) => only(at.settings.lead === 'on', ['off', { lead: 'off' }] as const)),
	setWrong('second-leader', 4, 'lead', (at) =>
		only(at.settings.work === 'follow', ['on', { work: 'held', lead: 'on' }] as const),
	),
	setWrong('leader-under-desk', 6, 'lead', (at, sheet) =>
		only(sheet.desk !== null && at.settings.work === 'line', [
			'on',
			{ work: 'programme', lead: 'on', programme: programmeOf(at, 'fade') ?? at.settings.programme },
		] as const),
	),
	setWrong('limit-low', 3, 'limit', () => [['low', { limit: 10 }] as const]),
	setWrong('level-down', 4, 'level', (at) =>
		only(!byLine(at), ['out', { level: 0 }, 0.5] as const, ['low', { level: 5 }, 0.5] as const),
	),
	setWrong(
		'strobe-left-on',
		4,
		'strobe',
		(at) => only(at.settings.work === 'held', ['strobe', { strobe: 12 }] as const),
		{ cautions: ['flashing'] },
	),
	setWrong(
		'strobe-programme',
		3,
		'work',
		(at) =>
			only(true, [
				'strobe',
				{ work: 'programme', programme: programmeOf(at, 'strobe') ?? at.settings.programme, speed: 90 },
			] as const),
		{ cautions: ['flashing'] },
	),
	setWrong('wrong-held', 4, 'held', (at) =>
		only(
			at.settings.work === 'held',
			...at.profile.held
				.filter(({ id }) => id !== at.settings.held)
				.slice(0, 2)
				.map(({ id }) => [id, { held: id }, 0.5] as const),
		),
	),
	setWrong('curve-wrong', 2, 'curve', (at) =>
		only(
			true,
			...(['square', 'soft', 'straight'] as const)
				.filter((curve) => curve !== at.settings.curve)
				.slice(0, 1)
				.map((curve) => [curve, { curve }] as const),
		),
	),
	setWrong('loss-set-wrong', 2, 'loss', (at) =>
		only(byLine(at), ...(['hold', 'dark', 'programme'] as const).map((loss) => [loss, { loss }, 0.5] as const)),
	),
	setWrong('hearing-nothing', 2, 'hearing', (at) =>
		only(at.settings.work === 'programme' && isIntact(at), ['deaf', { hearing: 0 }] as const),
	),
	setWrong('back-at-defaults', 3, 'address', ({ profile }) => [['defaults', profile.defaults] as const]),
	{
		id: 'one-switch-wrong',
		family: 'panel',
		weight: 9,
		repair: 'set-switches',
		cautions: [],
		// the three ways that happen: the switch beside the right one, the last one up forgotten, an old one left up
		spots: (sheet) =>
			meantOf(sheet)
				.filter(({ isDip, settings }) => isDip && settings.work === 'line')
				.flatMap((at) => [1, 4, 7].map((number) => ({ place: at.fixture.id, detail: `${number}`, share: 1 / 3 }))),
		events: (sheet, { place, detail }) => {
			return flipped(sheet, place, Number(detail));
		},
	},
	{
		id: 'tenth-switch-up',
		family: 'panel',
		weight: 5,
		repair: 'set-switches',
		cautions: [],
		spots: (sheet) =>
			meantOf(sheet)
				.filter(({ isDip, fixture }) => isDip && !fixture.switches?.[9])
				.map(({ fixture }) => ({ place: fixture.id })),
		events: (_, { place }) => [{ type: 'switch.flip', fixture: place, switch: 10, up: true }],
	},
	{
		// of those that lead, follow or light by themselves: what it does is set by switches too
		id: 'function-switch-wrong',
		since: 2,
		family: 'panel',
		weight: 6,
		repair: 'set-switches',
		cautions: [],
		spots: (sheet) =>
			meantOf(sheet).flatMap(({ isDip, settings, fixture, profile }) => {
				if (!isDip || settings.work === 'line' || profile.panel.kind !== 'dip') return [];
				const numbers = [...new Set(profile.panel.fields.flatMap(({ switches }) => switches))].filter((n) => n < 10);
				return numbers.map((number) => ({ place: fixture.id, detail: `${number}`, share: 1 / numbers.length }));
			}),
		events: (sheet, { place, detail }) => flipped(sheet, place, Number(detail)),
	},
	{
		id: 'tenth-switch-down',
		since: 2,
		family: 'panel',
		weight: 5,
		repair: 'set-switches',
		cautions: [],
		spots: (sheet) =>
			meantOf(sheet)
				.filter(({ isDip, fixture }) => isDip && fixture.switches?.[9])
				.map(({ fixture }) => ({ place: fixture.id })),
		events: (_, { place }) => [{ type: 'switch.flip', fixture: place, switch: 10, up: false }],
	},
	{
		id: 'slide-wrong',
		family: 'panel',
		weight: 5,
		repair: 'set-switches',
		cautions: [],
		spots: (sheet) =>
			meantOf(sheet).flatMap(({ fixture, profile }) => {
				if (profile.panel.kind !== 'dip') return [];
				const at = profile.panel.slides.findIndex(({ positions }) => positions.some(({ sets }) => sets.mode));
				const count = profile.panel.slides[at]?.positions.length ?? 0;
				return Array.from({ length: count }, (_, to) => to)
					.filter((to) => to !== (fixture.slides?.[at] ?? 0))
					.map((to) => ({ place: fixture.id, detail: `${to}`, share: 1 / (count - 1) }));
			}),
		events: (sheet, { place, detail }) => {
			const { profile } = meant(sheet, place);
			const slide =
				profile.panel.kind === 'dip'
					? profile.panel.slides.find(({ positions }) => positions.some(({ sets }) => sets.mode))
					: undefined;
			return slide ? [{ type: 'slide.move', fixture: place, slide: slide.id, to: Number(detail) }] : [];
		},
	},
];

function isIntact({ profile, settings }: MeantFixture): boolean {
	return profile.programmes.find(({ id }) => id === settings.programme)?.kind === 'sound';
}
